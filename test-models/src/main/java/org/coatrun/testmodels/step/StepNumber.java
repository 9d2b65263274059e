package org.coatrun.testmodels.step;

/**
 * Writes reals with thirteen digits, leading zeros included, the same on each machine and each Java
 * version.
 *
 * <p>Thirteen digits keep a kilometre to a ten-millionth of a millimetre and drop the noise of
 * adding in binary. {@code Double.toString} would differ between Java 17 and 21.
 */
final class StepNumber {
  private static final int DIGITS = 13;
  private static final double[] POWERS = powers();

  private StepNumber() {}

  private static double[] powers() {
    double[] powers = new double[19];
    powers[0] = 1;
    for (int i = 1; i < powers.length; i++) {
      powers[i] = powers[i - 1] * 10;
    }
    return powers;
  }

  /** Returns the text, always with a point. */
  static String text(double value) {
    byte[] buffer = new byte[32];
    return new String(buffer, 0, put(value, buffer, 0), java.nio.charset.StandardCharsets.US_ASCII);
  }

  /**
   * Puts the text into a buffer with room for 32 bytes.
   *
   * @return the position after the text
   * @throws IllegalArgumentException for a value that is not finite or has more than 13 digits
   *     before the point
   */
  static int put(double value, byte[] buffer, int from) {
    double size = Math.abs(value);
    if (!(size < POWERS[DIGITS])) {
      throw new IllegalArgumentException("A real must be finite and below 1e13, not " + value);
    }
    int decimals = DIGITS - digitsBefore(size);
    long scaled = (long) Math.rint(size * POWERS[decimals]);
    while (decimals > 0 && scaled % 10 == 0) {
      scaled /= 10;
      decimals--;
    }
    int at = from;
    if (value < 0 && scaled != 0) {
      buffer[at++] = '-';
    }
    return putScaled(scaled, decimals, buffer, at);
  }

  private static int digitsBefore(double size) {
    int digits = 0;
    while (size >= POWERS[digits]) {
      digits++;
    }
    return digits;
  }

  private static int putScaled(long scaled, int decimals, byte[] buffer, int from) {
    long unit = (long) POWERS[decimals];
    int at = putWhole(scaled / unit, buffer, from);
    buffer[at++] = '.';
    long rest = scaled % unit;
    for (int i = decimals - 1; i >= 0; i--) {
      buffer[at + i] = (byte) ('0' + rest % 10);
      rest /= 10;
    }
    return at + decimals;
  }

  /** Puts a whole number that is not negative. */
  static int putWhole(long value, byte[] buffer, int from) {
    int length = 1;
    for (long v = value / 10; v > 0; v /= 10) {
      length++;
    }
    long rest = value;
    for (int i = length - 1; i >= 0; i--) {
      buffer[from + i] = (byte) ('0' + rest % 10);
      rest /= 10;
    }
    return from + length;
  }
}
