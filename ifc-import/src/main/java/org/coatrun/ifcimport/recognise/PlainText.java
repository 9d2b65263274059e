package org.coatrun.ifcimport.recognise;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Text made comparable: lower case, no accents, single blanks. */
final class PlainText {

  private static final Pattern MARKS = Pattern.compile("[\\u0300-\\u0307\\u0309-\\u036f]+");
  private static final Pattern BREAKS = Pattern.compile("[\\s_;:,()\\[\\]{}<>|\"]+");

  private PlainText() {}

  static String of(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    if (!isPlain(lower)) {
      // Composed letters are taken apart so that their accents can go, and put together again.
      String apart = Normalizer.normalize(lower, Normalizer.Form.NFKD);
      lower = Normalizer.normalize(MARKS.matcher(apart).replaceAll(""), Normalizer.Form.NFKC);
      lower = lower.replace("ß", "ss").replace("ø", "o").replace("ł", "l").replace("æ", "ae");
    }
    return BREAKS.matcher(lower).replaceAll(" ").trim();
  }

  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) > 127) {
        return false;
      }
    }
    return true;
  }
}
