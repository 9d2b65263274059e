package org.coatrun.ifcimport.part21;

/** Kinds of bytes in an exchange structure. */
final class Ascii {

  private static final byte DIGIT = 1;
  private static final byte NAME = 2;
  private static final byte BLANK = 4;
  private static final byte STOP = 8;
  private static final byte[] KIND = new byte[256];

  static {
    for (int c = '0'; c <= '9'; c++) {
      KIND[c] = DIGIT | NAME;
    }
    for (int c = 'A'; c <= 'Z'; c++) {
      KIND[c] = NAME;
      KIND[c + 32] = NAME;
    }
    KIND['_'] = NAME;
    // Control characters are not in the standard's alphabet; exporters write tabs and line ends.
    for (int c = 0; c <= ' '; c++) {
      KIND[c] = BLANK;
    }
    for (char c : new char[] {'\'', '/', ';', '='}) {
      KIND[c] |= STOP;
    }
  }

  private Ascii() {}

  static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }

  /** A letter, digit or underscore. */
  static boolean isName(int c) {
    return c >= 0 && (KIND[c] & NAME) != 0;
  }

  /** What may begin an entity name; the exclamation mark begins a user-defined one. */
  static boolean isNameStart(int c) {
    return c == '!' || (isName(c) && !isDigit(c));
  }

  static boolean isBlank(int c) {
    return c >= 0 && c <= ' ';
  }

  /** What ends a run of plain bytes inside a record: quote, slash, semicolon, equals sign. */
  static boolean stops(byte c) {
    return (KIND[c & 0xff] & STOP) != 0;
  }

  static byte upper(byte c) {
    return c >= 'a' && c <= 'z' ? (byte) (c - 32) : c;
  }

  /** The value of a hexadecimal digit, or -1. */
  static int hex(int c) {
    return c < 128 ? Character.digit(c, 16) : -1;
  }
}
