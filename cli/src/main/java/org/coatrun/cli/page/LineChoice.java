package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.routing.line.LinePlanner;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.SpotComparison;

/**
 * A way to run the line that the page can show.
 *
 * @param label what to call it
 * @param plan its line
 * @param compared how its spot stood in the comparison; empty for a plan of several machines
 */
public record LineChoice(String label, LinePlan plan, Optional<SpotComparison> compared) {

  /**
   * The plan itself first, then the line that its comparison found from each other spot.
   *
   * @param plan that the planner made
   */
  public static List<LineChoice> of(LinePlanner planner, LinePlan plan) {
    var own = plan.comparison().stream().filter(c -> isAlone(plan, c.spot())).findFirst();
    List<LineChoice> choices = new ArrayList<>();
    choices.add(new LineChoice("the plan: " + names(plan), plan, own));
    for (SpotComparison other : plan.comparison()) {
      if (!isAlone(plan, other.spot())) {
        choices.add(new LineChoice(other.spot().name(), planner.from(other), Optional.of(other)));
      }
    }
    return choices;
  }

  private static boolean isAlone(LinePlan plan, MachineSpot spot) {
    return plan.machines().size() == 1 && plan.machines().get(0).name().equals(spot.name());
  }

  private static String names(LinePlan plan) {
    List<String> names = plan.machines().stream().map(MachineSpot::name).toList();
    return names.isEmpty() ? "no machine" : String.join(" and ", names);
  }
}
