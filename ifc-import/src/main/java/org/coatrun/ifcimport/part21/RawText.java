package org.coatrun.ifcimport.part21;

/** A text looked for at the beginning of a record's parameters, upper and lower case alike. */
final class RawText {

  private final String text;

  RawText(String text) {
    this.text = text;
  }

  /**
   * Whether the first parameter may be this text; true also where it cannot be told, because either
   * side is written in more than plain ASCII or the record is not in plain writing.
   *
   * @param bytes the record from its beginning, or as much of it as was read
   * @param open the parenthesis that opens its parameters, or -1 where that cannot be told
   */
  boolean mayBeFirst(byte[] bytes, int open) {
    if (open < 0 || open + 2 >= bytes.length || bytes[open + 1] != '\'' || !isPlain()) {
      return true;
    }
    int i = skipBlanks(bytes, open + 2);
    for (int k = 0; k < text.length(); k++, i++) {
      if (i >= bytes.length || isSpecial(bytes[i])) {
        return true;
      }
      if (Ascii.upper(bytes[i]) != Ascii.upper((byte) text.charAt(k))) {
        return false;
      }
    }
    i = skipBlanks(bytes, i);
    return i >= bytes.length || bytes[i] == '\'' || isSpecial(bytes[i]);
  }

  private static int skipBlanks(byte[] bytes, int from) {
    int i = from;
    while (i < bytes.length && Ascii.isBlank(bytes[i])) {
      i++;
    }
    return i;
  }

  /** What may stand for another character. */
  private static boolean isSpecial(byte b) {
    return b < 0 || b == '\\';
  }

  private boolean isPlain() {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c > 126 || c <= ' ' || c == '\'' || c == '\\') {
        return false;
      }
    }
    return true;
  }
}
