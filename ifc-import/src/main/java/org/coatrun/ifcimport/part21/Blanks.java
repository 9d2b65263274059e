package org.coatrun.ifcimport.part21;

/** White space between tokens: blanks, line ends, comments, print control directives. */
final class Blanks {

  private Blanks() {}

  /** The first place from {@code at} that is no white space, or {@code end}. */
  static int skip(byte[] bytes, int at, int end) {
    int i = at;
    while (i < end) {
      byte c = bytes[i];
      if (c >= 0 && c <= ' ') {
        i++;
      } else if (c == '/' && i + 1 < end && bytes[i + 1] == '*') {
        i = comment(bytes, i + 2, end);
      } else if (c == '\\' && isPrintControl(bytes, i, end)) {
        i += 3;
      } else {
        return i;
      }
    }
    return end;
  }

  private static int comment(byte[] bytes, int at, int end) {
    for (int i = at; i + 1 < end; i++) {
      if (bytes[i] == '*' && bytes[i + 1] == '/') {
        return i + 2;
      }
    }
    return end;
  }

  /** {@code \N\} and {@code \F\}, line and page breaks for printing. */
  private static boolean isPrintControl(byte[] bytes, int i, int end) {
    return i + 2 < end && (bytes[i + 1] == 'N' || bytes[i + 1] == 'F') && bytes[i + 2] == '\\';
  }
}
