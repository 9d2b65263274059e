package org.coatrun.ifcimport.part21;

/** A text looked for in the bytes of a record, upper and lower case alike. */
final class RawText {

  private final String text;

  RawText(String text) {
    this.text = text;
  }

  /** True also where it cannot be told: where either side is written in more than plain ASCII. */
  boolean mayStandIn(byte[] bytes) {
    boolean found = text.isEmpty() || !isPlain();
    for (int i = 0; i < bytes.length && !found; i++) {
      found = bytes[i] < 0 || bytes[i] == '\\' || isAt(bytes, i);
    }
    return found;
  }

  /** A quote is doubled in a file, and a backslash too. */
  private boolean isPlain() {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c > 126 || c < ' ' || c == '\'' || c == '\\') {
        return false;
      }
    }
    return true;
  }

  private boolean isAt(byte[] bytes, int at) {
    if (at + text.length() > bytes.length) {
      return false;
    }
    for (int i = 0; i < text.length(); i++) {
      if (Ascii.upper(bytes[at + i]) != Ascii.upper((byte) text.charAt(i))) {
        return false;
      }
    }
    return true;
  }
}
