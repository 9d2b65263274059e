package org.coatrun.cli.spreadsheet;

import java.util.regex.Pattern;

/** Text made fit for XML 1.0 and for cells. */
final class XmlText {

  /** The longest text of a cell. */
  static final int LONGEST = 32_767;

  // A cell's text takes _x000A_ for a line end; a text that has this by chance says so.
  private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private XmlText() {}

  /** The text of a cell: cut where it is too long, marks that XML does not carry replaced. */
  static String cell(String text) {
    if (isPlain(text)) {
      return text;
    }
    String lines = text.replace("\r\n", "\n").replace('\r', '\n');
    String whole = ESCAPE.matcher(lines).replaceAll("_x005F_");
    return escaped(whole.length() <= LONGEST ? whole : cut(whole));
  }

  /** Whether a text can be taken as it is, seen at a glance: most can. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c > '~' || c == '&' || c == '<' || c == '>' || c == '"') {
        return false;
      }
      if (c == 'x' && i > 0 && text.charAt(i - 1) == '_') {
        return false;
      }
    }
    return text.length() <= LONGEST;
  }

  private static String cut(String text) {
    int end = LONGEST - 3;
    return text.substring(0, Character.isHighSurrogate(text.charAt(end - 1)) ? end - 1 : end)
        + "...";
  }

  /** Text for an element or an attribute. */
  static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    text.codePoints().forEach(c -> append(out, c));
    return out.toString();
  }

  private static void append(StringBuilder out, int c) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      default -> out.appendCodePoint(isCarried(c) ? c : 0xFFFD);
    }
  }

  /** The characters of XML 1.0, without those that XML would turn into others. */
  private static boolean isCarried(int c) {
    return c == '\t'
        || c == '\n'
        || (c >= ' ' && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }
}
