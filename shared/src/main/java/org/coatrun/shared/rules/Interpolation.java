package org.coatrun.shared.rules;

import org.coatrun.shared.units.Length;

/** Straight lines between two tested points. */
public final class Interpolation {

  private Interpolation() {}

  /**
   * The thickness at {@code x} between ({@code x0}, {@code y0}) and ({@code x1}, {@code y1}).
   *
   * @throws IllegalArgumentException where {@code x} lies outside the two: nothing is extrapolated
   */
  public static Length linear(double x0, Length y0, double x1, Length y1, double x) {
    if (!(x0 < x1) || x < x0 || x > x1) {
      throw new IllegalArgumentException("nothing is extrapolated: " + x);
    }
    double part = (x - x0) / (x1 - x0);
    return Length.ofMetres(y0.metres() + part * (y1.metres() - y0.metres()));
  }
}
