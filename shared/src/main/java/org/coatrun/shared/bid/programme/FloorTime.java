package org.coatrun.shared.bid.programme;

import java.time.LocalDate;
import java.util.Optional;
import org.coatrun.shared.bid.labour.LabourSum;
import org.coatrun.shared.units.Volume;

/**
 * When a floor is sprayed.
 *
 * @param inPlace material in place
 * @param exactBags as a fraction; the bags of days are whole
 * @param crewHours of all crews together
 * @param begin hours of work of the programme at which the floor begins, all machines side by side
 * @param end hours at which it is done
 * @param firstDay number of its first working day, from 1
 * @param lastDay number of its last
 * @param firstDate where the job states a start
 * @param lastDate where the job states a start
 */
public record FloorTime(
    String floor,
    Volume inPlace,
    double exactBags,
    LabourSum crewHours,
    double begin,
    double end,
    int firstDay,
    int lastDay,
    Optional<LocalDate> firstDate,
    Optional<LocalDate> lastDate) {

  /** Working days from its first to its last. */
  public int days() {
    return lastDay - firstDay + 1;
  }
}
