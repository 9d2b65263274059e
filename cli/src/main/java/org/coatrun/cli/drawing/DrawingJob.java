package org.coatrun.cli.drawing;

import java.util.List;
import java.util.Objects;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;

/**
 * What drawings are made from.
 *
 * @param building its name; may be empty
 * @param units of lengths and of scales
 * @param plan the plan for the request
 * @param cautions that stand on every sheet
 */
public record DrawingJob(
    String building, UnitSystem units, LineRequest request, LinePlan plan, List<String> cautions) {
  public DrawingJob {
    cautions = List.copyOf(cautions);
    Objects.requireNonNull(building);
    Objects.requireNonNull(units);
    if (plan.floors().size() != request.floors().size()) {
      throw new IllegalArgumentException(
          "a plan of "
              + plan.floors().size()
              + " floors for a request of "
              + request.floors().size());
    }
  }
}
