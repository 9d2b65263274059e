package org.coatrun.shared.estimate;

import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Evidence;
import org.coatrun.shared.model.Identity;

/** The words for why an element counts or not. */
public final class Reasons {

  static final String FASTENER = "a fastener: bolts and welds are not coated by themselves";

  static final String DECK = "a sheet of deck: counted with the decks";

  private Reasons() {}

  /** Why an element is not taken for steel, such as {@code concrete, by its material "C30/37"}. */
  static String notSteel(Classification classification) {
    String word = classification.substance().word();
    return classification.evidence().isEmpty()
        ? word
        : word + ", by " + phrase(classification.evidence().get(0));
  }

  /** One piece of evidence in words, such as {@code its material "S355"}. */
  public static String phrase(Evidence evidence) {
    String place =
        switch (evidence.source()) {
          case MATERIAL -> "its material";
          case PROFILE -> "its profile";
          case CLASS -> "its class";
          case TYPE_NAME -> "the name of its type";
          case NAME -> "its name";
          case LAYER -> "a layer of material";
          case BODY -> "its body";
          case JOB -> "the job file";
        };
    return evidence.text().isEmpty() ? place : place + " \"" + evidence.text() + "\"";
  }

  /** What to call an element in a sentence: its class with its mark, name or number. */
  static String name(Identity identity) {
    String kind = identity.sourceClass().isEmpty() ? "Element" : identity.sourceClass();
    String called = identity.mark().isEmpty() ? identity.name() : identity.mark();
    return called.isEmpty() ? kind + " #" + identity.id().step() : kind + " \"" + called + "\"";
  }
}
