package org.coatrun.shared.units;

/**
 * The time a rating holds.
 *
 * @param minutes the value in minutes; finite
 */
public record FireDuration(double minutes) implements Comparable<FireDuration> {

  /** Nothing: zero minutes. */
  public static final FireDuration ZERO = new FireDuration(0);

  private static final double HOURS = 60;

  public FireDuration {
    if (!Double.isFinite(minutes)) {
      throw new IllegalArgumentException("not a finite fireduration: " + minutes);
    }
  }

  /** The fire duration of {@code value} minutes. */
  public static FireDuration ofMinutes(double value) {
    return new FireDuration(value);
  }

  /** The fire duration of {@code value} hours. */
  public static FireDuration ofHours(double value) {
    return new FireDuration(value * HOURS);
  }

  /** This fire duration in hours. */
  public double hours() {
    return minutes / HOURS;
  }

  /** The sum of both. */
  public FireDuration plus(FireDuration other) {
    return new FireDuration(minutes + other.minutes);
  }

  /** This less the other; may be negative. */
  public FireDuration minus(FireDuration other) {
    return new FireDuration(minutes - other.minutes);
  }

  /** This, {@code factor} times. */
  public FireDuration times(double factor) {
    return new FireDuration(minutes * factor);
  }

  @Override
  public int compareTo(FireDuration other) {
    return Double.compare(minutes, other.minutes);
  }
}
