package org.coatrun.ifcimport.part21;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The first parameter of a record where it is a text in plain writing; nothing else is read. */
final class FirstText {

  private FirstText() {}

  /**
   * The text, blanks around it taken off; empty where something else stands there, the text is
   * written in more than plain ASCII, or it does not end within the bytes.
   *
   * @param bytes the record from its beginning, or as much of it as was read
   * @param open the parenthesis that opens its parameters, or -1 where that cannot be told
   */
  static Optional<String> of(byte[] bytes, int open) {
    int from = open + 2;
    if (open < 0 || from >= bytes.length || bytes[from - 1] != '\'') {
      return Optional.empty();
    }
    int to = from;
    while (to < bytes.length && isPlain(bytes[to])) {
      to++;
    }
    boolean closed = to + 1 < bytes.length && bytes[to] == '\'' && bytes[to + 1] != '\'';
    return closed
        ? Optional.of(new String(bytes, from, to - from, StandardCharsets.ISO_8859_1).trim())
        : Optional.empty();
  }

  private static boolean isPlain(byte b) {
    return b >= ' ' && b < 127 && b != '\'' && b != '\\';
  }
}
