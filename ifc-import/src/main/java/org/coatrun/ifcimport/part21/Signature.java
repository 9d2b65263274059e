package org.coatrun.ifcimport.part21;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Tells from its first bytes whether a file can be an exchange structure, and else what it is. */
final class Signature {

  private static final int LOOKED_AT = 1 << 16;

  private Signature() {}

  /**
   * Checks the beginning.
   *
   * @return where the text begins: behind a byte order mark, if there is one
   * @throws ModelFileException where this is something else, with what it is
   */
  static long check(String name, ByteSource source) {
    byte[] head = new byte[(int) Math.min(LOOKED_AT, source.size())];
    source.read(0, head, 0, head.length);
    String text = new String(head, StandardCharsets.ISO_8859_1);
    if (text.isBlank()) {
      throw new ModelFileException(name + " is empty; export or copy the model again.");
    }
    Kinds.nameOf(text)
        .ifPresent(
            kind -> {
              throw new ModelFileException(
                  name + " is " + kind + ", not a model; export the model as IFC (.ifc).");
            });
    String upper = text.toUpperCase(Locale.ROOT);
    if (!upper.contains("ISO-10303-21") && !upper.contains("FILE_SCHEMA")) {
      throw noModel(name);
    }
    return text.startsWith("\u00ef\u00bb\u00bf") ? 3 : 0;
  }

  /** The sentence for a file that is nothing known. */
  static ModelFileException noModel(String name) {
    return new ModelFileException(
        name + " is not an IFC model: it does not begin as one; export the model as IFC (.ifc).");
  }
}
