package org.coatrun.cli.report;

import java.util.Locale;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Mass;
import org.coatrun.shared.units.Volume;

/** The units that the screen shows. Files are in SI whatever these are. */
public enum UnitSystem {
  /** US customary: feet, square feet, pounds. */
  US("ft", "ft2", "lb", "bf"),
  /** Metres, square metres, kilograms. */
  SI("m", "m2", "kg", "m3");

  private final String lengthUnit;
  private final String areaUnit;
  private final String weightUnit;
  private final String materialUnit;

  UnitSystem(String lengthUnit, String areaUnit, String weightUnit, String materialUnit) {
    this.lengthUnit = lengthUnit;
    this.areaUnit = areaUnit;
    this.weightUnit = weightUnit;
    this.materialUnit = materialUnit;
  }

  /** US where the first file measures in feet or inches, else SI. */
  public static UnitSystem usedBy(Building building) {
    String unit =
        building.files().isEmpty()
            ? ""
            : building.files().get(0).lengthUnit().toLowerCase(Locale.ROOT);
    boolean us = unit.contains("foot") || unit.contains("feet") || unit.contains("inch");
    return us ? US : SI;
  }

  /** Its unit of length. */
  public String lengthUnit() {
    return lengthUnit;
  }

  /** Its unit of area. */
  public String areaUnit() {
    return areaUnit;
  }

  /** Its unit of weight. */
  public String weightUnit() {
    return weightUnit;
  }

  /** Its unit of material in place. */
  public String materialUnit() {
    return materialUnit;
  }

  /** To the tenth, without the unit. */
  public String show(Length value) {
    return grouped(1, value(value));
  }

  /** To the hundredth, for elevations. */
  public String showFinely(Length value) {
    return grouped(2, value(value));
  }

  /** To the tenth, without the unit. */
  public String show(Area value) {
    return grouped(1, this == US ? value.squareFeet() : value.squareMetres());
  }

  /** Whole, without the unit. */
  public String show(Mass value) {
    return grouped(0, this == US ? value.pounds() : value.kilograms());
  }

  /** Material in place: whole board feet, or hundredths of a cubic metre, without the unit. */
  public String show(Volume value) {
    return this == US ? grouped(0, value.boardFeet()) : grouped(2, value.cubicMetres());
  }

  /** The same with its unit. */
  String showMaterial(Volume value) {
    return show(value) + " " + materialUnit;
  }

  /** What a bag gives in place, with its unit: board feet or litres, to the tenth. */
  String showBag(Volume value) {
    return this == US ? grouped(1, value.boardFeet()) + " bf" : grouped(1, value.litres()) + " L";
  }

  /** Its unit of thickness. */
  public String thicknessUnit() {
    return this == US ? "in" : "mm";
  }

  /** Inches to the thousandth, millimetres to the tenth, without the unit. */
  public String showThickness(Length value) {
    return this == US ? grouped(3, value.inches()) : grouped(1, value.millimetres());
  }

  /** The units that a job file names. */
  public static UnitSystem of(org.coatrun.shared.job.UnitSystem named) {
    return named == org.coatrun.shared.job.UnitSystem.US ? US : SI;
  }

  /** What a job file would name them. */
  public org.coatrun.shared.job.UnitSystem forJob() {
    return this == US ? org.coatrun.shared.job.UnitSystem.US : org.coatrun.shared.job.UnitSystem.SI;
  }

  private double value(Length length) {
    return this == US ? length.feet() : length.metres();
  }

  private static String grouped(int decimals, double value) {
    String text = String.format(Locale.ROOT, "%,." + decimals + "f", value);
    return text.matches("-[0.]+") ? text.substring(1) : text;
  }
}
