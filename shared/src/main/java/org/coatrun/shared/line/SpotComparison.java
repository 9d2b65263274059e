package org.coatrun.shared.line;

import java.util.List;
import org.coatrun.shared.units.Length;

/**
 * A machine spot compared with others, each taken alone.
 *
 * @param cost of the best cover found from this spot
 * @param bound no cover from this spot that leaves as few places out costs less
 * @param uncovered places of work that no line from this spot reaches
 * @param longestFlexible longest flexible line, whip included
 * @param pipe pipe in the risers and on the ground
 * @param setUps outlets set up in all
 * @param breaks what limits it breaks, each in one sentence
 * @param needs what it needs, each in one sentence
 */
public record SpotComparison(
    MachineSpot spot,
    double cost,
    double bound,
    int uncovered,
    Length longestFlexible,
    Length pipe,
    int setUps,
    List<String> breaks,
    List<String> needs) {
  public SpotComparison {
    breaks = List.copyOf(breaks);
    needs = List.copyOf(needs);
  }
}
