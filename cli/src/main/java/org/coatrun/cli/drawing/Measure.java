package org.coatrun.cli.drawing;

import java.util.Locale;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Pressure;
import org.coatrun.shared.units.Volume;

/** Quantities as drawings write them. */
record Measure(UnitSystem units) {

  boolean us() {
    return units == UnitSystem.US;
  }

  /** To the inch, {@code 12'-6"}, or to the centimetre, {@code 3.81 m}. */
  String length(Length value) {
    return us() ? feetAndInches(value) : format("%.2f m", value.metres());
  }

  /** Coarsely, for words in passing: {@code 20 ft}, {@code 6.1 m}. */
  String about(Length value) {
    return us() ? format("%.0f ft", value.feet()) : format("%.1f m", value.metres());
  }

  /** With its sign: {@code +36'-0"}. */
  String elevation(Length value) {
    String size = length(Length.ofMetres(Math.abs(value.metres())));
    boolean zero = size.equals(length(Length.ZERO));
    return (zero ? "±" : value.metres() < 0 ? "−" : "+") + size;
  }

  /** Coating in place: board feet or cubic metres. */
  String coating(Volume value) {
    return us() ? format("%,.0f bd ft", value.boardFeet()) : format("%.2f m³", value.cubicMetres());
  }

  String pressure(Pressure value) {
    return us() ? format("%.0f psi", value.psi()) : format("%.0f kPa", value.kilopascals());
  }

  /** Air in cubic feet a minute or cubic metres an hour. */
  String air(FlowRate value) {
    return us()
        ? format("%,.0f CFM", value.cubicFeetPerMinute())
        : format("%,.0f m³/h", value.cubicMetresPerSecond() * 3600);
  }

  static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }

  private static String feetAndInches(Length value) {
    long inches = Math.round(Math.abs(value.inches()));
    String sign = value.metres() < 0 && inches > 0 ? "−" : "";
    return sign + inches / 12 + "'-" + inches % 12 + "\"";
  }
}
