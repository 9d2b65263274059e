package org.coatrun.shared.bid.amounts;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.coatrun.shared.rules.Numbers;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Density;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Mass;
import org.coatrun.shared.units.Pressure;
import org.coatrun.shared.units.Share;
import org.coatrun.shared.units.Temperature;
import org.coatrun.shared.units.Volume;
import org.coatrun.shared.yaml.Words;

/** Values of a job as text, in the form of the job file. */
final class ValueText {

  private ValueText() {}

  static String of(Object value, String unit) {
    if (value instanceof Optional<?> optional) {
      return optional.map(inner -> of(inner, unit)).orElse("");
    }
    if (value instanceof List<?> list) {
      return list.stream().map(v -> of(v, unit)).collect(Collectors.joining(", ", "[", "]"));
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof Number number) {
      return (Numbers.plain(number.doubleValue()) + " " + unit).strip();
    }
    if (value instanceof Enum<?> constant) {
      return Words.of(constant);
    }
    return value instanceof Record record ? record(record) : String.valueOf(value);
  }

  private static String record(Record value) {
    if (value instanceof Length l) {
      return shortest(
          List.of("ft", "in", "m", "mm"),
          List.of(l.feet(), l.inches(), l.metres(), l.millimetres()));
    }
    if (value instanceof Area a) {
      return shortest(
          List.of("ft2", "in2", "m2"), List.of(a.squareFeet(), a.squareInches(), a.squareMetres()));
    }
    if (value instanceof Mass m) {
      return shortest(List.of("lb", "kg"), List.of(m.pounds(), m.kilograms()));
    }
    if (value instanceof Density d) {
      return shortest(
          List.of("pcf", "kg/m3"), List.of(d.poundsPerCubicFoot(), d.kilogramsPerCubicMetre()));
    }
    if (value instanceof Share s) {
      return Numbers.plain(s.percent()) + " %";
    }
    if (value instanceof Temperature t) {
      return shortest(List.of("F", "C"), List.of(t.fahrenheit(), t.celsius()));
    }
    return rarer(value);
  }

  private static String rarer(Record value) {
    if (value instanceof FireDuration d) {
      return Numbers.plain(d.hours()) + " h";
    }
    if (value instanceof Pressure p) {
      return shortest(List.of("psi", "bar", "kPa"), List.of(p.psi(), p.bar(), p.kilopascals()));
    }
    if (value instanceof FlowRate f) {
      return shortest(
          List.of("gal/min", "L/min", "cfm"),
          List.of(f.gallonsPerMinute(), f.litresPerMinute(), f.cubicFeetPerMinute()));
    }
    if (value instanceof Volume v) {
      return shortest(List.of("gal", "L"), List.of(v.usGallons(), v.litres()));
    }
    return Arrays.stream(value.getClass().getRecordComponents())
        .map(c -> Words.key(c.getName()) + ": " + of(component(value, c), ""))
        .collect(Collectors.joining(", ", "{", "}"));
  }

  /**
   * The number in the unit that it is written shortest in without loss, which is most likely the
   * one that it was stated in; of equals the first.
   */
  private static String shortest(List<String> units, List<Double> values) {
    String best = Numbers.plain(values.get(0)) + " " + units.get(0);
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < units.size(); i++) {
      String number = Numbers.plain(values.get(i));
      double lost = Math.abs(Double.parseDouble(number) - values.get(i));
      if (lost <= 1e-9 * Math.abs(values.get(i)) && number.length() < least) {
        best = number + " " + units.get(i);
        least = number.length();
      }
    }
    return best;
  }

  private static Object component(Record value, RecordComponent component) {
    try {
      return component.getAccessor().invoke(value);
    } catch (InvocationTargetException | IllegalAccessException e) {
      throw new IllegalStateException("cannot read " + component.getName(), e);
    }
  }
}
