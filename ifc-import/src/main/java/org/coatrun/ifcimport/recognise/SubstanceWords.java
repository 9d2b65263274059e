package org.coatrun.ifcimport.recognise;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.coatrun.shared.model.Substance;

/** What a text says that something is made of. */
final class SubstanceWords {

  private static final WordList WORDS = WordList.read("words.txt");

  /** Steel that is filled with concrete or stands in it is steel all the same. */
  private static final Pattern FILLED =
      Pattern.compile(
          "(?i)concrete[- ](filled|encased)|(filled|encased)[- ](with|in)[- ]concrete"
              + "|betongef(ü|ue)llt|ausbetoniert|einbetoniert|rempli de b[ée]ton");

  private static final int REMEMBERED = 20_000;
  private static final Map<String, Optional<Substance>> KNOWN = new ConcurrentHashMap<>();

  private SubstanceWords() {}

  static Optional<Substance> find(String text) {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Optional<Substance> known = KNOWN.get(text);
    if (known == null) {
      known = WORDS.find(withoutFilling(text)).map(hit -> Substance.valueOf(hit.heading()));
      if (KNOWN.size() < REMEMBERED) {
        KNOWN.put(text, known);
      }
    }
    return known;
  }

  private static String withoutFilling(String text) {
    return FILLED.matcher(text).replaceAll(" ");
  }
}
