package org.coatrun.ifcimport.part21;

/** Where a text ends: at a quote that is neither doubled nor the character of {@code \S\'}. */
final class Quotes {

  private Quotes() {}

  /** The place of the closing quote of a text that begins at {@code at}, or -1. */
  static int close(byte[] bytes, int at, int end) {
    int i = at;
    while (i < end) {
      byte c = bytes[i];
      if (c == '\'') {
        if (i + 1 >= end || bytes[i + 1] != '\'') {
          return i;
        }
        i += 2;
      } else if (c == '\\') {
        i += escape(bytes, i, end);
      } else {
        i++;
      }
    }
    return -1;
  }

  private static int escape(byte[] bytes, int i, int end) {
    int next = i + 1 < end ? bytes[i + 1] : -1;
    if (next == '\\') {
      return 2;
    }
    return next == 'S' && i + 2 < end && bytes[i + 2] == '\\' ? 4 : 1;
  }
}
