package org.coatrun.shared.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as people write them in a reason. */
public final class Numbers {

  private static final int SIGNIFICANT = 4;
  private static final int SIXTEENTHS = 16;

  private Numbers() {}

  /** Four significant digits, whole numbers in full, no exponent, no trailing zeros. */
  public static String plain(double value) {
    if (value == 0) {
      return "0";
    }
    BigDecimal exact = BigDecimal.valueOf(value);
    int whole = exact.precision() - exact.scale();
    return exact
        .setScale(Math.max(0, SIGNIFICANT - whole), RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** Inches with a fraction where it is a whole number of sixteenths, such as {@code 1-1/2}. */
  public static String inches(double inches) {
    double sixteenths = inches * SIXTEENTHS;
    long whole = Math.round(sixteenths);
    if (whole < 0 || Math.abs(sixteenths - whole) > 1e-6) {
      return plain(inches);
    }
    return fraction(whole);
  }

  private static String fraction(long sixteenths) {
    long units = sixteenths / SIXTEENTHS;
    long rest = sixteenths % SIXTEENTHS;
    if (rest == 0) {
      return Long.toString(units);
    }
    long bottom = SIXTEENTHS;
    while (rest % 2 == 0) {
      rest /= 2;
      bottom /= 2;
    }
    return (units == 0 ? "" : units + "-") + rest + "/" + bottom;
  }
}
