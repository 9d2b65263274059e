package org.coatrun.shared.bid.labour;

import org.coatrun.shared.bid.material.Grid;
import org.coatrun.shared.bid.material.MaterialLine;
import org.coatrun.shared.job.Labour;

/**
 * The spraying of one element.
 *
 * @param rate board feet in place an hour, from the floor
 * @param crewHours of one crew with one nozzle: board feet by area over the rate, times the factor
 *     of its height
 */
public record LabourLine(MaterialLine material, Reach reach, double rate, double crewHours) {

  /** The spraying of a line. */
  public static LabourLine of(MaterialLine line, Labour labour) {
    Reach reach = Reach.of(line.item().place().top(), labour.bands());
    double rate = line.kind().boardFeetAnHour(labour.rates());
    double hours = line.byArea().boardFeet() / rate * reach.factor();
    return new LabourLine(line, reach, rate, Grid.of(hours));
  }

  /** The floor that it is sprayed from. */
  public String floor() {
    return material.floor();
  }
}
