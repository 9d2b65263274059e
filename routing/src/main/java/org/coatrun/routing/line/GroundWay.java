package org.coatrun.routing.line;

import java.util.List;
import org.coatrun.shared.line.Leg;

/**
 * A way over the machine's floor, from the machine to the foot of a riser or to where pipe begins.
 *
 * @param legs from the machine on; empty where nothing lies between
 */
record GroundWay(List<Leg> legs) {

  GroundWay {
    legs = List.copyOf(legs);
  }

  double flexible() {
    return sum(true);
  }

  double pipe() {
    return sum(false);
  }

  private double sum(boolean flexible) {
    return legs.stream()
        .filter(l -> l.kind().flexible() == flexible)
        .mapToDouble(l -> l.laid().metres())
        .sum();
  }
}
