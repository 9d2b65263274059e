package org.coatrun.shared.bid.inspection;

import java.util.List;

/**
 * What readings say.
 *
 * @param sets each member and deck spot, in the order of the sheet
 * @param floors in the order of the sheet
 * @param resprays in the order of the sheet
 */
public record InspectionJudgement(
    List<SetJudgement> sets, List<FloorJudgement> floors, List<Respray> resprays) {

  public InspectionJudgement {
    sets = List.copyOf(sets);
    floors = List.copyOf(floors);
    resprays = List.copyOf(resprays);
  }

  /** Whether every floor was read in full and passes both rules. */
  public boolean passes() {
    return floors.stream()
        .allMatch(f -> f.complete() && f.passesAveraging() && f.passesTenPercent());
  }
}
