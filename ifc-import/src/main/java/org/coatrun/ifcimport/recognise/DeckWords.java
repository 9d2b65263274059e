package org.coatrun.ifcimport.recognise;

import java.util.Optional;

/** Words for metal deck in names and materials. */
final class DeckWords {

  private static final WordList WORDS = WordList.read("decks.txt");

  private DeckWords() {}

  /** The word that says deck; empty where none does, or where it is one of timber or paving. */
  static Optional<String> find(String text) {
    return WORDS.find(text).filter(h -> h.heading().equals("DECK")).map(WordList.Hit::word);
  }
}
