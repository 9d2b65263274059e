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
      return Numbers.plain(l.feet()) + " ft";
    }
    if (value instanceof Area a) {
      return Numbers.plain(a.squareFeet()) + " ft2";
    }
    if (value instanceof Mass m) {
      return Numbers.plain(m.pounds()) + " lb";
    }
    if (value instanceof Density d) {
      return Numbers.plain(d.poundsPerCubicFoot()) + " pcf";
    }
    if (value instanceof Share s) {
      return Numbers.plain(s.percent()) + " %";
    }
    if (value instanceof Temperature t) {
      return Numbers.plain(t.fahrenheit()) + " F";
    }
    return rarer(value);
  }

  private static String rarer(Record value) {
    if (value instanceof FireDuration d) {
      return Numbers.plain(d.hours()) + " h";
    }
    if (value instanceof Pressure p) {
      return Numbers.plain(p.psi()) + " psi";
    }
    if (value instanceof FlowRate f) {
      return Numbers.plain(f.gallonsPerMinute()) + " gal/min";
    }
    if (value instanceof Volume v) {
      return Numbers.plain(v.usGallons()) + " gal";
    }
    return Arrays.stream(value.getClass().getRecordComponents())
        .map(c -> Words.key(c.getName()) + ": " + of(component(value, c), ""))
        .collect(Collectors.joining(", ", "{", "}"));
  }

  private static Object component(Record value, RecordComponent component) {
    try {
      return component.getAccessor().invoke(value);
    } catch (InvocationTargetException | IllegalAccessException e) {
      throw new IllegalStateException("cannot read " + component.getName(), e);
    }
  }
}
