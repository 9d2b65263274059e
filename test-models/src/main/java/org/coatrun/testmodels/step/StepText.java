package org.coatrun.testmodels.step;

/** Encodes strings as ISO 10303-21 section 6.4.3 asks: quotes doubled, other alphabets as X2. */
final class StepText {
  private StepText() {}

  /** Returns the text between the quotes. */
  static String encode(String value) {
    StringBuilder out = new StringBuilder(value.length() + 8);
    for (int i = 0; i < value.length(); i++) {
      append(out, value.charAt(i));
    }
    return out.toString();
  }

  private static void append(StringBuilder out, char c) {
    if (c == '\'') {
      out.append("''");
    } else if (c == '\\') {
      out.append("\\\\");
    } else if (c >= 32 && c < 127) {
      out.append(c);
    } else {
      out.append("\\X2\\").append(hex(c)).append("\\X0\\");
    }
  }

  private static String hex(char c) {
    String digits = Integer.toHexString(c).toUpperCase(java.util.Locale.ROOT);
    return "0000".substring(digits.length()) + digits;
  }
}
