package org.coatrun.geometry.exposure;

import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;

/**
 * What counts as covered and as a hole.
 *
 * @param contactGap faces this far apart, or this deep in each other, still touch
 * @param holeMouth holes with a smaller mouth do not change the coated area
 */
public record ExposureOptions(Length contactGap, Area holeMouth) {

  public ExposureOptions {
    if (!(contactGap.metres() >= 0) || !(holeMouth.squareMetres() >= 0)) {
      throw new IllegalArgumentException("a contact gap and a hole's mouth are not negative");
    }
  }

  /** 5 mm between faces and 15 in² (97 cm²) for holes: common practice. */
  public static ExposureOptions defaults() {
    return new ExposureOptions(Length.ofMillimetres(5), Area.ofSquareInches(15));
  }

  /** As the job file states them. */
  public static ExposureOptions of(org.coatrun.shared.job.Exposure job) {
    return new ExposureOptions(job.contactGap(), job.holeThreshold());
  }
}
