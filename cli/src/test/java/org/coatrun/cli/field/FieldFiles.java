package org.coatrun.cli.field;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;

/** Real models and tables beside the project; checks that need them are skipped where they lack. */
final class FieldFiles {

  private FieldFiles() {}

  static Path of(String name) {
    Path file = Path.of(System.getProperty("coatrun.field.dir"), name);
    assumeTrue(Files.exists(file), () -> "skipped: " + name + " is not beside the project");
    return file;
  }
}
