package org.coatrun.shared.bid.inspection;

/**
 * What two rules, each apart, say of a floor. By the averaging rule a floor passes when each of its
 * members and deck spots does; by the 10 % rule when not more than 10 % of all its readings lie
 * under their design.
 *
 * @param sets members and deck spots on the sheet
 * @param notRead of them, without any reading
 * @param failAveraging of them, by the averaging rule
 * @param failTenPercent of them, by the 10 % rule, each by its own readings
 * @param below readings under their design
 * @param readings that were filled in
 * @param missing readings that were left blank
 */
public record FloorJudgement(
    String floor,
    int sets,
    int notRead,
    int failAveraging,
    int failTenPercent,
    long below,
    long readings,
    long missing,
    boolean passesAveraging,
    boolean passesTenPercent) {

  /** Whether every place was read. */
  public boolean complete() {
    return missing == 0;
  }
}
