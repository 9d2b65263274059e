package org.coatrun.shared.rules;

/**
 * Where on a kind of member thickness is read: so many places at each end of a 12 in length.
 *
 * <p>Source: IBC 2018 1705.14.4.6 to .9 (1705.15 from 2021): beam or girder 9, joist or truss 7,
 * wide-flange column 12, hollow or pipe column 4. Deck: four readings in a 12 by 12 in square
 * (1705.14.4.4, from memory).
 */
public enum ReadingPlace {
  BEAM("beam or girder", 9, 2),
  JOIST_OR_TRUSS("joist or truss", 7, 2),
  W_COLUMN("wide-flange column", 12, 2),
  HOLLOW_COLUMN("hollow or pipe column", 4, 2),
  DECK("deck", 4, 1);

  private final String word;
  private final int atEachEnd;
  private final int ends;

  ReadingPlace(String word, int atEachEnd, int ends) {
    this.word = word;
    this.atEachEnd = atEachEnd;
    this.ends = ends;
  }

  /** In plain English, for field sheets. */
  public String word() {
    return word;
  }

  /** Readings at each end of the 12 in length. */
  public int atEachEnd() {
    return atEachEnd;
  }

  /** All readings of one place. */
  public int readings() {
    return atEachEnd * ends;
  }
}
