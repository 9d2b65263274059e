package org.coatrun.cli.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/**
 * Numbers for files: half-even at a fixed number of decimals, trailing zeros dropped, so that the
 * same value always gives the same text.
 */
public final class Rounded {

  /** Below this a scaled number is off by less than {@link #NEAR_TIE}, for all that is lost. */
  private static final double QUICK = 1e12;

  private static final double NEAR_TIE = 1e-3;

  /** Spreads bits over the places. */
  private static final long PRIME = 0x9E3779B97F4A7C15L;

  /**
   * Numbers rounded before: models repeat themselves. Each place holds the last that fell on it.
   */
  private static final Known[] KNOWN = new Known[1 << 14];

  private static final double[] POWERS = {1, 10, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

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
    long bits = Double.doubleToLongBits(value);
    int place = (Long.hashCode(bits * PRIME) ^ decimals) & (KNOWN.length - 1);
    Known known = KNOWN[place];
    if (known == null || known.bits != bits || known.decimals != decimals) {
      known = new Known(bits, decimals, anew(decimals, value));
      KNOWN[place] = known;
    }
    return known.rounded;
  }

  /** Immutable, so that threads may share places without a lock. */
  private record Known(long bits, int decimals, BigDecimal rounded) {}

  private static BigDecimal anew(int decimals, double value) {
    double scaled = value * POWERS[decimals];
    double tie = Math.abs(scaled - Math.floor(scaled) - 0.5);
    return Math.abs(scaled) < QUICK && tie > NEAR_TIE
        ? of(Math.round(scaled), decimals)
        : exactly(decimals, value);
  }

  /** A number of units of the last decimal, without zeros at its end. */
  private static BigDecimal of(long units, int decimals) {
    long left = units;
    int scale = left == 0 ? 0 : decimals;
    while (scale > 0 && left % 10 == 0) {
      left /= 10;
      scale--;
    }
    return BigDecimal.valueOf(left, scale);
  }

  private static BigDecimal exactly(int decimals, double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? BigDecimal.ZERO : plainZeros(rounded.stripTrailingZeros());
  }

  // 100 must not become 1E+2.
  private static BigDecimal plainZeros(BigDecimal value) {
    return value.scale() < 0 ? value.setScale(0) : value;
  }
}
