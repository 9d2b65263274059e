package org.coatrun.cli.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/**
 * Numbers for files: half-even at a fixed number of decimals, trailing zeros dropped, so that the
 * same value always gives the same text.
 */
public final class Rounded {

  private Rounded() {}

  /** Areas in m2 and volumes in m3: nine decimals. */
  public static BigDecimal fine(double value) {
    return to(9, value);
  }

  /** Lengths in m, weights in kg, factors: six decimals. */
  public static BigDecimal plain(double value) {
    return to(6, value);
  }

  /** Like {@link #plain(double)}, or null for an empty cell. */
  public static BigDecimal plain(OptionalDouble value) {
    return value.isPresent() ? plain(value.getAsDouble()) : null;
  }

  private static BigDecimal to(int decimals, double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? BigDecimal.ZERO : plainZeros(rounded.stripTrailingZeros());
  }

  // 100 must not become 1E+2.
  private static BigDecimal plainZeros(BigDecimal value) {
    return value.scale() < 0 ? value.setScale(0) : value;
  }
}
