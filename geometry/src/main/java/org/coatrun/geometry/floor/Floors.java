package org.coatrun.geometry.floor;

import java.util.List;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.line.FloorOutline;

/**
 * The floors of a building that steel can be sprayed from.
 *
 * @param floors from the lowest up
 * @param findings what was assumed or could not be cut, sorted
 */
public record Floors(List<FloorOutline> floors, List<Finding> findings) {
  public Floors {
    floors = List.copyOf(floors);
    findings = findings.stream().sorted().toList();
  }
}
