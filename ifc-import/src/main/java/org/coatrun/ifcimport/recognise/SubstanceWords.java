package org.coatrun.ifcimport.recognise;

import java.util.Optional;
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

  private SubstanceWords() {}

  static Optional<Substance> find(String text) {
    return WORDS.find(withoutFilling(text)).map(hit -> Substance.valueOf(hit.heading()));
  }

  private static String withoutFilling(String text) {
    return text.isEmpty() ? text : FILLED.matcher(text).replaceAll(" ");
  }
}
