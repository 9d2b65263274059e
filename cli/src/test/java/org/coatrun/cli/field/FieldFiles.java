package org.coatrun.cli.field;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Real models and tables beside the project; checks that need them are skipped where they lack. */
public final class FieldFiles {

  private FieldFiles() {}

  /** One of them, by its name under the folder. */
  public static Path of(String name) {
    Path file = Path.of(System.getProperty("coatrun.field.dir"), name);
    assumeTrue(Files.exists(file), () -> "skipped: " + name + " is not beside the project");
    return file;
  }

  /** The names of all models; none where they are not beside the project. */
  public static List<String> models() throws IOException {
    Path folder = Path.of(System.getProperty("coatrun.field.dir"), "models");
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .map(file -> folder.relativize(file).toString())
          .filter(name -> name.matches(".*\\.(ifc|ifczip)"))
          .sorted()
          .toList();
    }
  }
}
