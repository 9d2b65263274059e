package org.coatrun.ifcimport.part21;

import java.nio.charset.StandardCharsets;

/**
 * Where the first parameter of a record stands, if it is a text in plain writing: printable ASCII
 * without directives or doubled quotes. Blanks around it do not count.
 *
 * @param to behind its last byte; less than {@code from} where no such text was found
 */
record FirstText(int from, int to) {

  private static final FirstText NONE = new FirstText(0, -1);

  /**
   * Looks for the text.
   *
   * @param bytes the record from its beginning, or as much of it as was read
   * @param length how many of the bytes count
   * @param open the parenthesis that opens its parameters, or -1 where that cannot be told
   */
  static FirstText of(byte[] bytes, int length, int open) {
    int from = open + 2;
    if (open < 0 || from >= length || bytes[from - 1] != '\'') {
      return NONE;
    }
    int to = from;
    while (to < length && isPlain(bytes[to])) {
      to++;
    }
    boolean closed = to + 1 < length && bytes[to] == '\'' && bytes[to + 1] != '\'';
    return closed ? trimmed(bytes, from, to) : NONE;
  }

  private static FirstText trimmed(byte[] bytes, int from, int to) {
    int first = from;
    int last = to;
    while (first < last && bytes[first] == ' ') {
      first++;
    }
    while (last > first && bytes[last - 1] == ' ') {
      last--;
    }
    return new FirstText(first, last);
  }

  private static boolean isPlain(byte b) {
    return b >= ' ' && b < 127 && b != '\'' && b != '\\';
  }

  boolean isFound() {
    return to >= from;
  }

  String in(byte[] bytes) {
    return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
  }
}
