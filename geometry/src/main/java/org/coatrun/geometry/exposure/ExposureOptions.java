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

  /** 5 mm between faces and 0.01 m² for holes: common practice. */
  public static ExposureOptions defaults() {
    return new ExposureOptions(Length.ofMillimetres(5), Area.ofSquareMetres(0.01));
  }
}
