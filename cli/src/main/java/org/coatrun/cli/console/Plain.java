package org.coatrun.cli.console;

/** Text of a model made safe to show: a name in a file must not steer the terminal. */
public final class Plain {

  private static final int REPLACEMENT = '\uFFFD';

  private Plain() {}

  /**
   * The text on one line: blanks for line ends and tabs, and a replacement mark for each other
   * control character, and for those that turn the direction of writing.
   */
  public static String text(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    text.codePoints().map(Plain::plain).forEach(plain::appendCodePoint);
    return plain.toString();
  }

  private static int plain(int codePoint) {
    if (codePoint == '\n' || codePoint == '\r' || codePoint == '\t') {
      return ' ';
    }
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          REPLACEMENT;
      case Character.FORMAT -> turnsDirection(codePoint) ? REPLACEMENT : codePoint;
      default -> codePoint;
    };
  }

  private static boolean turnsDirection(int codePoint) {
    return (codePoint >= 0x202A && codePoint <= 0x202E)
        || (codePoint >= 0x2066 && codePoint <= 0x2069);
  }
}
