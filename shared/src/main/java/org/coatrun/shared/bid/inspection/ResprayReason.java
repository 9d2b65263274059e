package org.coatrun.shared.bid.inspection;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.job.UnitSystem;
import org.coatrun.shared.rules.ThicknessJudge;
import org.coatrun.shared.units.Length;

/** Says which rules a set of readings fails, and by how much. */
record ResprayReason(UnitSystem units) {

  String of(SetJudgement set) {
    List<String> parts = new ArrayList<>();
    ThicknessJudge.Averaging averaging = set.averaging().orElseThrow();
    if (ThicknessJudge.isUnder(averaging.average(), set.head().design())) {
      parts.add("averages " + text(averaging.average()) + " of " + text(set.head().design()));
    }
    if (!set.underLeast().isEmpty()) {
      parts.add(
          "lowest reading "
              + text(averaging.lowest())
              + ", least allowed "
              + text(averaging.lowestAllowed()));
    }
    ThicknessJudge.TenPercent share = set.tenPercent().orElseThrow();
    if (!share.passes()) {
      parts.add(
          share.below() + " of " + share.readings() + " readings under the design, over 10 %");
    }
    return String.join("; ", parts);
  }

  private String text(Length length) {
    return FieldSheet.written(length, units);
  }
}
