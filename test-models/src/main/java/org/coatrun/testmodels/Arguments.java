package org.coatrun.testmodels;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.coatrun.testmodels.ifc.LengthUnit;
import org.coatrun.testmodels.ifc.ModelOptions;
import org.coatrun.testmodels.ifc.Schema;
import org.coatrun.testmodels.scenario.DemonstrationBuilding;
import org.coatrun.testmodels.scenario.FirstTry;
import org.coatrun.testmodels.scenario.Hall;
import org.coatrun.testmodels.scenario.LShaped;
import org.coatrun.testmodels.scenario.Scenario;
import org.coatrun.testmodels.scenario.SteelTower;
import org.coatrun.testmodels.scenario.TowerSize;
import org.coatrun.testmodels.shape.Vec3;

/** The generator's arguments: scenario, file, then options by name. */
record Arguments(String scenarioName, Map<String, String> values) {
  private static final List<String> KNOWN =
      List.of("schema", "unit", "rotate", "tilt", "move", "seed", "megabytes", "storeys", "facts");

  /** Reads the arguments; a wrong one is an {@link IllegalArgumentException} in one sentence. */
  static Arguments parse(String... args) {
    Map<String, String> values = new HashMap<>();
    for (int i = 2; i < args.length; i += 2) {
      String name = args[i].startsWith("--") ? args[i].substring(2) : "";
      if (!KNOWN.contains(name) || i + 1 == args.length) {
        throw new IllegalArgumentException(
            "Cannot use '" + args[i] + "'; options are --" + String.join(", --", KNOWN) + ".");
      }
      values.put(name, args[i + 1]);
    }
    return new Arguments(args[0], values);
  }

  /** Returns the scenario with its size. */
  Scenario scenario() {
    return switch (scenarioName) {
      case "first-try" -> new FirstTry();
      case "harbour-office" -> new DemonstrationBuilding();
      case "hall" -> new Hall();
      case "l-shaped" -> new LShaped();
      case "tower" -> new SteelTower(towerSize());
      default ->
          throw new IllegalArgumentException(
              "No scenario '"
                  + scenarioName
                  + "'; take harbour-office, first-try, hall, l-shaped or tower.");
    };
  }

  private TowerSize towerSize() {
    Optional<TowerSize> byStoreys = size("storeys").map(n -> TowerSize.plain(n.intValue()));
    return byStoreys.or(() -> size("megabytes").map(TowerSize::ofMegabytes)).orElse(TowerSize.FULL);
  }

  /** Returns how the model shall be written. */
  ModelOptions options() {
    String[] move = values.getOrDefault("move", "0,0,0").split(",");
    if (move.length != 3) {
      throw new IllegalArgumentException("--move needs three numbers in metres, such as 10,20,0.");
    }
    Vec3 offset = new Vec3(number(move[0]), number(move[1]), number(move[2]));
    return new ModelOptions(
        choice(Schema.values(), values.getOrDefault("schema", "IFC4")),
        choice(LengthUnit.values(), values.getOrDefault("unit", "millimetre")),
        number(values.getOrDefault("rotate", "0")),
        number(values.getOrDefault("tilt", "0")),
        offset,
        (long) number(values.getOrDefault("seed", "1")));
  }

  /** Returns where the facts shall go, if anywhere. */
  Optional<Path> factsFile() {
    return Optional.ofNullable(values.get("facts")).map(Path::of);
  }

  Optional<Double> size(String name) {
    return Optional.ofNullable(values.get(name)).map(Arguments::number);
  }

  private static double number(String text) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("'" + text + "' is no number.", e);
    }
  }

  private static <E extends Enum<E>> E choice(E[] all, String text) {
    return Arrays.stream(all)
        .filter(e -> e.name().equals(text.toUpperCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'" + text + "' is not one of " + Arrays.toString(all) + "."));
  }
}
