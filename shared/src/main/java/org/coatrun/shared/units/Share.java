package org.coatrun.shared.units;

/**
 * A part of a whole: waste, yield, allowance.
 *
 * @param fraction the value as a fraction of one; finite
 */
public record Share(double fraction) implements Comparable<Share> {

  /** Nothing. */
  public static final Share NONE = new Share(0);

  private static final double PER_CENT = 100;

  public Share {
    if (!Double.isFinite(fraction)) {
      throw new IllegalArgumentException("not a finite share: " + fraction);
    }
  }

  /** The share of {@code value} in a hundred. */
  public static Share ofPercent(double value) {
    return new Share(value / PER_CENT);
  }

  /** This share in per cent. */
  public double percent() {
    return fraction * PER_CENT;
  }

  @Override
  public int compareTo(Share other) {
    return Double.compare(fraction, other.fraction);
  }
}
