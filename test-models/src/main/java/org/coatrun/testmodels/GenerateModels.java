package org.coatrun.testmodels;

import java.io.IOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.coatrun.testmodels.facts.BuildingFacts;
import org.coatrun.testmodels.facts.FactsJson;
import org.coatrun.testmodels.scenario.Models;
import org.coatrun.testmodels.scenario.Samples;
import org.coatrun.testmodels.scenario.Scenario;

/**
 * Writes sample models: {@code samples FOLDER} for the ones that stand in this module, or {@code
 * SCENARIO FILE [options]} for any other; the module's README lists scenarios and options.
 */
public final class GenerateModels {
  private static final Logger LOG = System.getLogger(GenerateModels.class.getName());
  private static final int WRONG_USE = 2;

  private GenerateModels() {}

  /** Runs the generator; the exit code is 0, or 2 for a wrong argument, or 1 for a failing disk. */
  public static void main(String[] args) {
    int code = run(args);
    if (code != 0) {
      System.exit(code);
    }
  }

  /** Does the same and returns the exit code. */
  static int run(String... args) {
    try {
      generate(args);
      return 0;
    } catch (IllegalArgumentException e) {
      LOG.log(Level.ERROR, e.getMessage());
      return WRONG_USE;
    } catch (IOException e) {
      LOG.log(Level.ERROR, "Cannot write: " + e.getMessage());
      return 1;
    }
  }

  private static void generate(String... args) throws IOException {
    if (args.length < 2) {
      throw new IllegalArgumentException("Say what to write and where, see test-models/README.md");
    }
    Path target = Path.of(args[1]);
    if (args[0].equals("samples")) {
      samples(target);
      return;
    }
    Arguments arguments = Arguments.parse(args);
    Scenario scenario = arguments.scenario();
    Optional<Path> list = arguments.factsFile();
    if (list.isPresent()) {
      BuildingFacts facts = Models.write(scenario, arguments.options(), target);
      Files.writeString(list.get(), FactsJson.write(facts));
    } else {
      Models.stream(scenario, arguments.options(), target);
    }
  }

  private static void samples(Path folder) throws IOException {
    for (Samples.Sample sample : Samples.all()) {
      Models.stream(sample.scenario(), sample.options(), folder.resolve(sample.file()));
    }
  }
}
