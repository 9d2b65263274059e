package org.coatrun.testmodels.scenario;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.coatrun.testmodels.facts.BuildingFacts;
import org.coatrun.testmodels.facts.ElementFact;
import org.coatrun.testmodels.ifc.ModelOptions;

/** Writes scenarios into files or memory, for tests and for the generator's command. */
public final class Models {
  private Models() {}

  /**
   * Writes a scenario into a file.
   *
   * @return what was written, element by element
   * @throws IOException if the file cannot be written
   */
  public static BuildingFacts write(Scenario scenario, ModelOptions options, Path file)
      throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      return collect(scenario, options, out);
    }
  }

  /**
   * Writes a scenario of any size into a file and keeps nothing of it.
   *
   * @return the number of records
   * @throws IOException if the file cannot be written
   */
  public static int stream(Scenario scenario, ModelOptions options, Path file) throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      return scenario.write(out, options, fact -> {});
    }
  }

  /** Returns the bytes of a scenario's file. */
  public static byte[] bytes(Scenario scenario, ModelOptions options) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    facts(scenario, options, out);
    return out.toByteArray();
  }

  /** Returns what is known of a scenario. */
  public static BuildingFacts facts(Scenario scenario, ModelOptions options) {
    return facts(scenario, options, OutputStream.nullOutputStream());
  }

  private static BuildingFacts facts(Scenario scenario, ModelOptions options, OutputStream out) {
    try {
      return collect(scenario, options, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static BuildingFacts collect(Scenario scenario, ModelOptions options, OutputStream out)
      throws IOException {
    List<ElementFact> elements = new ArrayList<>();
    int records = scenario.write(out, options, elements::add);
    return new BuildingFacts(elements, records);
  }
}
