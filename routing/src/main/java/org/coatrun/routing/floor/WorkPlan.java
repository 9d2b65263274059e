package org.coatrun.routing.floor;

import java.util.List;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.line.WorkPiece;

/**
 * All work, by the place it is sprayed from.
 *
 * @param cells by floor, then from south to north and west to east
 * @param groundless pieces, or bits of them, that have no floor under them
 */
public record WorkPlan(List<WorkCell> cells, List<WorkPiece> groundless) {
  public WorkPlan {
    cells = List.copyOf(cells);
    groundless = List.copyOf(groundless);
  }
}
