package org.coatrun.shared.bid.inspection;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.units.Pressure;

/**
 * What the special inspector measures.
 *
 * @param floors with coated work, in the order they are sprayed
 * @param rows of the field sheets, floor by floor
 * @param leastBond by the height of the building; empty where no height is known
 */
public record InspectionPlan(
    List<FloorInspection> floors, List<FieldRow> rows, Optional<Pressure> leastBond) {

  public InspectionPlan {
    floors = List.copyOf(floors);
    rows = List.copyOf(rows);
  }

  /** Readings in all. */
  public long readings() {
    return rows.size();
  }

  /** Density samples in all, and bond samples as many. */
  public long samples() {
    return floors.stream().mapToLong(FloorInspection::samples).sum();
  }
}
