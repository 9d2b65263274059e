package org.coatrun.shared.line;

import java.util.List;
import org.coatrun.shared.units.Length;

/**
 * A riser as the plan uses it.
 *
 * @param machine name of the machine spot that feeds it
 * @param standpipe whether pipe rises, or hose
 * @param ground the line from the machine to its foot
 * @param from index of the machine's floor
 * @param to index of the floor at its other end
 * @param rise height between both, up or down
 */
public record RiserUse(
    Riser riser,
    String machine,
    boolean standpipe,
    List<Leg> ground,
    int from,
    int to,
    Length rise) {
  public RiserUse {
    ground = List.copyOf(ground);
  }
}
