package org.coatrun.cli.line;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.Hardware;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.SetUp;

/**
 * Pieces of one kind, for the job or for one set-up.
 *
 * @param scope {@code job}, or {@code set-up} and its number
 */
record HardwareRow(String scope, String storey, String machine, String riser, Hardware hardware) {

  /** For the whole job first, then set-up by set-up in the order of work. */
  static List<HardwareRow> of(LinePlan plan) {
    var rows = new ArrayList<HardwareRow>();
    plan.hardware().forEach(h -> rows.add(new HardwareRow("job", "", "", "", h)));
    List<SetUp> order =
        plan.floors().stream()
            .flatMap(f -> f.setUps().stream())
            .sorted((a, b) -> Integer.compare(a.number(), b.number()))
            .toList();
    for (SetUp s : order) {
      FloorPlan floor = plan.floors().get(s.floor());
      for (Hardware h : s.hardware()) {
        rows.add(
            new HardwareRow(
                "set-up " + s.number(),
                floor.outline().storey(),
                s.machine(),
                s.riser().orElse(""),
                h));
      }
    }
    return rows;
  }
}
