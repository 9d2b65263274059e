package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.coatrun.routing.line.LinePlanner;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
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
   * The plan itself first, then each other spot of its comparison, planned alone.
   *
   * @param plan of the request
   */
  public static List<LineChoice> of(LineRequest request, LinePlan plan) {
    List<SpotComparison> others =
        plan.comparison().stream().filter(c -> !isAlone(plan, c.spot())).toList();
    // Each spot is planned on its own, so that they can be planned side by side.
    List<LinePlan> plans =
        IntStream.range(0, others.size())
            .parallel()
            .mapToObj(i -> LinePlanner.plan(request.withSpots(List.of(others.get(i).spot()), 1)))
            .toList();
    List<LineChoice> choices = new ArrayList<>();
    choices.add(
        new LineChoice(
            "the plan: " + names(plan),
            plan,
            plan.comparison().stream().filter(c -> isAlone(plan, c.spot())).findFirst()));
    for (int i = 0; i < others.size(); i++) {
      SpotComparison other = others.get(i);
      choices.add(new LineChoice(other.spot().name(), plans.get(i), Optional.of(other)));
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
