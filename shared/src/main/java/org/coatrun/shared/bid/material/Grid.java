package org.coatrun.shared.bid.material;

import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Volume;

/**
 * Holds the amounts of a line to a fine binary grid, so that sums are the same in whatever order
 * and by whatever groups they are taken: multiples of one power of two add without rounding.
 *
 * <p>The step is 2^-33 of the unit: about a tenth of a cubic millimetre, a thousandth of a square
 * millimetre, half a microsecond. Sums are exact up to 2^20 units (a million cubic metres).
 */
public final class Grid {

  private static final int BITS = 33;

  private Grid() {}

  /** The nearest multiple of the step. */
  public static double of(double value) {
    return Math.scalb(Math.rint(Math.scalb(value, BITS)), -BITS);
  }

  static Area of(Area area) {
    return Area.ofSquareMetres(of(area.squareMetres()));
  }

  static Volume of(Volume volume) {
    return Volume.ofCubicMetres(of(volume.cubicMetres()));
  }
}
