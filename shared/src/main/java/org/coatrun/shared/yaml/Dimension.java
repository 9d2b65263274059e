package org.coatrun.shared.yaml;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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

/** The quantities that a file can hold, with the units that each is written in. */
enum Dimension {
  LENGTH(
      Length.class,
      "a length",
      unit("ft", Length::ofFeet),
      unit("in", Length::ofInches),
      unit("m", Length::ofMetres),
      unit("mm", Length::ofMillimetres)),
  AREA(
      Area.class,
      "an area",
      unit("ft2", Area::ofSquareFeet),
      unit("in2", Area::ofSquareInches),
      unit("m2", Area::ofSquareMetres)),
  VOLUME(
      Volume.class,
      "a volume",
      unit("gal", Volume::ofUsGallons),
      unit("ft3", Volume::ofCubicFeet),
      unit("bf", Volume::ofBoardFeet),
      unit("L", Volume::ofLitres),
      unit("m3", Volume::ofCubicMetres)),
  MASS(
      Mass.class,
      "a weight",
      unit("lb", Mass::ofPounds),
      unit("kg", Mass::ofKilograms),
      unit("t", Mass::ofTonnes)),
  DENSITY(
      Density.class,
      "a density",
      unit("pcf", Density::ofPoundsPerCubicFoot),
      unit("kg/m3", Density::ofKilogramsPerCubicMetre)),
  PRESSURE(
      Pressure.class,
      "a pressure",
      unit("psi", Pressure::ofPsi),
      unit("psf", Pressure::ofPsf),
      unit("bar", Pressure::ofBar),
      unit("kPa", Pressure::ofKilopascals)),
  FLOW(
      FlowRate.class,
      "a flow",
      unit("gal/min", FlowRate::ofGallonsPerMinute),
      unit("L/min", FlowRate::ofLitresPerMinute),
      unit("cfm", FlowRate::ofCubicFeetPerMinute)),
  FIRE_DURATION(
      FireDuration.class,
      "a fire rating",
      unit("h", FireDuration::ofHours),
      unit("min", FireDuration::ofMinutes)),
  TEMPERATURE(
      Temperature.class,
      "a temperature",
      unit("F", Temperature::ofFahrenheit),
      unit("C", Temperature::ofCelsius)),
  SHARE(Share.class, "a share", unit("%", Share::ofPercent));

  /** A unit and how a number in it becomes a quantity. */
  record Unit(String name, Function<Double, Object> make) {}

  private final Class<?> type;
  private final String word;

  @SuppressWarnings("ImmutableEnumChecker") // made by List.of and never changed
  private final List<Unit> units;

  Dimension(Class<?> type, String word, Unit... units) {
    this.type = type;
    this.word = word;
    this.units = List.copyOf(Arrays.asList(units));
  }

  private static Unit unit(String name, Function<Double, Object> make) {
    return new Unit(name, make);
  }

  static Optional<Dimension> of(Class<?> type) {
    return Arrays.stream(values()).filter(d -> d.type == type).findFirst();
  }

  String word() {
    return word;
  }

  Class<?> type() {
    return type;
  }

  List<Unit> units() {
    return units;
  }

  String unitNames() {
    return String.join(", ", units.stream().map(Unit::name).toList());
  }

  Optional<Unit> unit(String name) {
    return units.stream().filter(u -> u.name().equals(name)).findFirst();
  }
}
