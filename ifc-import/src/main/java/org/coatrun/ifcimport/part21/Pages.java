package org.coatrun.ifcimport.part21;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** The code pages that texts may use. */
final class Pages {

  /** Windows-1252, which agrees with ISO 8859-1 wherever that prints. */
  static final Charset WINDOWS = named("windows-1252");

  private Pages() {}

  /** ISO 8859 part 1 to 9, as {@code \PA\} to {@code \PI\} choose them. */
  static Charset latin(int part) {
    return named("ISO-8859-" + part);
  }

  /** Some Java runtimes are built without the rarer pages; part 1 is always there. */
  private static Charset named(String name) {
    return Charset.isSupported(name) ? Charset.forName(name) : StandardCharsets.ISO_8859_1;
  }
}
