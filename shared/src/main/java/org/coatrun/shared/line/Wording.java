package org.coatrun.shared.line;

import java.util.Locale;
import java.util.Objects;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Pressure;
import org.coatrun.shared.units.Volume;

/**
 * How the sentences of a plan say quantities and places, each with its unit.
 *
 * @param us whether in US customary units; else in SI
 * @param origin added to places, so that sentences name them as the model does
 */
public record Wording(boolean us, Vec2 origin) {

  public Wording {
    Objects.requireNonNull(origin);
  }

  /** Feet, psi, board feet; places as they are. */
  public static Wording customary() {
    return new Wording(true, new Vec2(0, 0));
  }

  /** Metres, kilopascals, cubic metres; places as they are. */
  public static Wording metric() {
    return new Wording(false, new Vec2(0, 0));
  }

  /** To the tenth of a foot, or to the centimetre: {@code 36.0 ft}. */
  public String length(Length value) {
    return us ? say("%.1f ft", value.feet()) : say("%.2f m", value.metres());
  }

  /** Coarsely, to the foot or to the tenth of a metre: {@code 250 ft}. */
  public String about(Length value) {
    return us ? say("%.0f ft", value.feet()) : say("%.1f m", value.metres());
  }

  /** Two sides of a rectangle, coarsely: {@code 30 by 20 ft}. */
  public String sides(Length longer, Length shorter) {
    return us
        ? say("%.0f by ", longer.feet()) + about(shorter)
        : say("%.1f by ", longer.metres()) + about(shorter);
  }

  /** {@code x 12.5 ft, y 40.0 ft}, in the coordinates of the model. */
  public String place(Vec2 at) {
    return "x "
        + length(Length.ofMetres(at.x() + origin.x()))
        + ", y "
        + length(Length.ofMetres(at.y() + origin.y()));
  }

  /** Coating in place: {@code 1448 board feet}. */
  public String coating(Volume value) {
    return us ? say("%.0f board feet", value.boardFeet()) : say("%.2f m3", value.cubicMetres());
  }

  /** {@code 65 psi} or {@code 448 kPa}. */
  public String pressure(Pressure value) {
    return us ? say("%.0f psi", value.psi()) : say("%.0f kPa", value.kilopascals());
  }

  /** Water: {@code 55 gal} or {@code 208 L}. */
  public String water(Volume value) {
    return us ? say("%.0f gal", value.usGallons()) : say("%.0f L", value.litres());
  }

  /** Air: {@code 8960 cfm} or {@code 15223 m3/h}. */
  public String air(FlowRate value) {
    return us
        ? say("%.0f cfm", value.cubicFeetPerMinute())
        : say("%.0f m3/h", 3600 * value.cubicMetresPerSecond());
  }

  /** Water: {@code 9.0 gal/min} or {@code 34.1 L/min}. */
  public String water(FlowRate value) {
    return us
        ? say("%.1f gal/min", value.gallonsPerMinute())
        : say("%.1f L/min", value.litresPerMinute());
  }

  /** The width of hose, or a thickness: {@code 0.75 in} or {@code 19 mm}. */
  public String width(Length value) {
    return us ? say("%.2f in", value.inches()) : say("%.0f mm", value.millimetres());
  }

  /** {@code 6458 ft2} or {@code 600 m2}. */
  public String area(Area value) {
    return us ? say("%.0f ft2", value.squareFeet()) : say("%.0f m2", value.squareMetres());
  }

  private static String say(String pattern, double value) {
    return String.format(Locale.ROOT, pattern, value);
  }
}
