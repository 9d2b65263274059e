package org.coatrun.ifcimport.entity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads the unit assignment of a project. */
public final class UnitReader {

  private static final int MOST_NESTED = 8;

  private static final Map<String, Double> PREFIXES =
      Map.ofEntries(
          Map.entry("EXA", 1e18),
          Map.entry("PETA", 1e15),
          Map.entry("TERA", 1e12),
          Map.entry("GIGA", 1e9),
          Map.entry("MEGA", 1e6),
          Map.entry("KILO", 1e3),
          Map.entry("HECTO", 1e2),
          Map.entry("DECA", 1e1),
          Map.entry("DECI", 1e-1),
          Map.entry("CENTI", 1e-2),
          Map.entry("MILLI", 1e-3),
          Map.entry("MICRO", 1e-6),
          Map.entry("NANO", 1e-9),
          Map.entry("PICO", 1e-12),
          Map.entry("FEMTO", 1e-15),
          Map.entry("ATTO", 1e-18));

  /** Units that files name without a factor that can be used; values by definition. */
  private static final Map<String, Double> NAMED =
      Map.of(
          "INCH", 0.0254,
          "FOOT", 0.3048,
          "YARD", 0.9144,
          "MILE", 1609.344,
          "DEGREE", Math.PI / 180,
          "GRAD", Math.PI / 200,
          "POUND", 0.45359237);

  private final IfcModel model;
  private final Map<String, Double> scales = new TreeMap<>();
  private final List<String> faults = new ArrayList<>();
  private String lengthName = "";

  private UnitReader(IfcModel model) {
    this.model = model;
  }

  /** The units of the file's project; of several projects the one with the lowest number. */
  public static Units read(IfcModel model) {
    var reader = new UnitReader(model);
    reader.readAssignment();
    return reader.result();
  }

  /**
   * SI units in one of a unit that a property or quantity names for itself; empty where it cannot
   * be told.
   */
  public static Optional<Double> scaleOf(Entity unit) {
    try {
      return Optional.of(scale(unit, 0));
    } catch (BrokenRecordException e) {
      return Optional.empty();
    }
  }

  private void readAssignment() {
    for (String context : List.of("IfcProject", "IfcContext")) {
      for (long id : model.idsOf(context)) {
        try {
          Optional<Entity> units = model.get(id).ref("UnitsInContext");
          if (units.isPresent()) {
            for (long unit : units.get().refIds("Units")) {
              readUnit(unit);
            }
            return;
          }
        } catch (BrokenRecordException e) {
          faults.add(e.getMessage());
        }
      }
    }
  }

  private void readUnit(long id) {
    try {
      Entity unit = model.get(id);
      if (unit.isA("IfcNamedUnit")) {
        String kind = unit.item("UnitType").orElse("");
        if (scales.putIfAbsent(kind, scale(unit, 0)) == null && kind.equals("LENGTHUNIT")) {
          lengthName = nameOf(unit);
        }
      }
    } catch (BrokenRecordException e) {
      faults.add(e.getMessage());
    }
  }

  private Units result() {
    boolean known = scales.containsKey("LENGTHUNIT");
    double length = scales.getOrDefault("LENGTHUNIT", 1.0);
    return new Units(
        length,
        scales.getOrDefault("AREAUNIT", length * length),
        scales.getOrDefault("VOLUMEUNIT", length * length * length),
        scales.getOrDefault("PLANEANGLEUNIT", 1.0),
        scales.getOrDefault("MASSUNIT", 1.0),
        known ? lengthName : "metre (assumed)",
        known,
        faults);
  }

  private static double scale(Entity unit, int depth) {
    if (depth > MOST_NESTED) {
      throw unit.broken("this unit is defined by itself");
    }
    double scale =
        unit.isA("IfcSIUnit")
            ? siScale(unit)
            : unit.isA("IfcConversionBasedUnit") ? conversion(unit, depth) : Double.NaN;
    if (!(scale > 0) || Double.isInfinite(scale)) {
      throw unit.broken("this unit could not be understood");
    }
    return scale;
  }

  private static double siScale(Entity unit) {
    String name = unit.item("Name").orElse("");
    double prefix = 1;
    Optional<String> given = unit.item("Prefix");
    if (given.isPresent()) {
      prefix = PREFIXES.getOrDefault(given.get(), Double.NaN);
    }
    return switch (name) {
      case "SQUARE_METRE" -> prefix * prefix;
      case "CUBIC_METRE" -> prefix * prefix * prefix;
      case "GRAM" -> prefix * 1e-3;
      default -> prefix;
    };
  }

  private static double conversion(Entity unit, int depth) {
    try {
      Entity factor = unit.need("ConversionFactor");
      double value = factor.needNumber("ValueComponent");
      return value * scale(factor.need("UnitComponent"), depth + 1);
    } catch (BrokenRecordException e) {
      Double known = NAMED.get(unit.text("Name").toUpperCase(Locale.ROOT).trim());
      if (known == null || depth > 0) {
        throw e;
      }
      return known;
    }
  }

  private static String nameOf(Entity unit) {
    if (unit.isA("IfcSIUnit")) {
      String prefix = unit.item("Prefix").orElse("").toLowerCase(Locale.ROOT);
      return prefix + unit.item("Name").orElse("").toLowerCase(Locale.ROOT);
    }
    return unit.text("Name").toLowerCase(Locale.ROOT);
  }
}
