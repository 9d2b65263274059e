package org.coatrun.ifcimport.part21;

/** A short, printable piece of a file for a message. */
final class Excerpt {

  private static final int MOST = 40;

  private Excerpt() {}

  /**
   * What stands in {@code bytes[start, end)}, shortened, with unprintable bytes as question marks.
   */
  static String of(byte[] bytes, int start, int end) {
    int to = Math.min(end, start + MOST);
    StringBuilder out = new StringBuilder();
    for (int i = start; i < to; i++) {
      int c = bytes[i];
      out.append(c >= ' ' && c < 127 ? (char) c : Ascii.isBlank(c) ? ' ' : '?');
    }
    return to < end ? out.append("...").toString() : out.toString();
  }

  /** The same between quotation marks. */
  static String quoted(byte[] bytes, int start, int end) {
    return "\"" + of(bytes, start, end) + "\"";
  }

  /** The end of the line that a place stands in. */
  static int lineEnd(byte[] bytes, int start, int end) {
    int i = start;
    while (i < end && bytes[i] != '\n' && bytes[i] != '\r') {
      i++;
    }
    return i;
  }
}
