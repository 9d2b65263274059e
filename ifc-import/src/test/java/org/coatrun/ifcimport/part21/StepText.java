package org.coatrun.ifcimport.part21;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.coatrun.shared.finding.Finding;

/** Small exchange structures for tests, written as text. */
final class StepText {

  private StepText() {}

  static final String HEAD =
      """
      ISO-10303-21;
      HEADER;
      FILE_DESCRIPTION(('ViewDefinition [CoordinationView]'),'2;1');
      FILE_NAME('a.ifc','2026-01-01T00:00:00',('An'),('Org'),'pre','sys','');
      FILE_SCHEMA(('IFC4'));
      ENDSEC;
      DATA;
      """;

  static final String FOOT = "ENDSEC;\nEND-ISO-10303-21;\n";

  /** The line of the first record. */
  static final long FIRST_LINE = 8;

  /** A whole file around some records. */
  static String file(String records) {
    return HEAD + records + "\n" + FOOT;
  }

  /** Writes one character as one byte. */
  static Path write(Path folder, String name, String content) {
    try {
      return Files.write(folder.resolve(name), content.getBytes(StandardCharsets.ISO_8859_1));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Opens a file with some records. */
  static StepFile open(Path folder, String records) {
    return openAll(folder, file(records));
  }

  /** Opens a file with this content. */
  static StepFile openAll(Path folder, String content) {
    return StepFile.open(write(folder, "model.ifc", content), StepOptions.DEFAULT);
  }

  /** The codes of a file's findings, in order. */
  static List<String> codes(StepFile file) {
    return file.findings().stream().map(f -> f.code().toString()).toList();
  }

  /** Decodes each record. */
  static void decodeAll(StepFile file) {
    for (String name : file.entityNames()) {
      for (long id : file.idsOf(name)) {
        file.record(id);
      }
    }
  }

  /** The findings after each record is decoded. */
  static List<Finding> allFindings(StepFile file) {
    decodeAll(file);
    return file.findings();
  }
}
