package org.coatrun.ifcimport.recognise;

import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * Tells what elements are taken for. Many of a model are described alike, bolts and plates most of
 * all: what the last few descriptions came to is remembered. Safe for several threads.
 */
public final class Recogniser {

  private static final int KEPT = 512;

  private record Known(Description description, Recognition recognition) {}

  private final AtomicReferenceArray<Known> last = new AtomicReferenceArray<>(KEPT);

  /** Loads the words that names are searched for. */
  public static void prepare() {
    DeckWords.find("deck");
    SubstanceWords.find("steel");
    Roles.find("beam");
    SectionNames.designation("W12X26");
  }

  public Recognition of(Description d) {
    int hash = 31 * (31 * d.name().hashCode() + d.typeName().hashCode()) + d.entity().hashCode();
    int slot = (hash ^ (hash >>> 16)) & (KEPT - 1);
    Known known = last.get(slot);
    if (known == null || !known.description.isSameAs(d)) {
      known = new Known(d, Recognition.of(d));
      last.set(slot, known);
    }
    return known.recognition;
  }
}
