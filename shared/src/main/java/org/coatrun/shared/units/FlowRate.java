package org.coatrun.shared.units;

/**
 * Volume per time.
 *
 * @param cubicMetresPerSecond the value in cubic metres per second; finite
 */
public record FlowRate(double cubicMetresPerSecond) implements Comparable<FlowRate> {

  /** Nothing: zero cubic metres per second. */
  public static final FlowRate ZERO = new FlowRate(0);

  private static final double GALLONS_PER_MINUTE = 3.785411784e-3 / 60;
  private static final double CUBIC_FEET_PER_MINUTE = 0.3048 * 0.3048 * 0.3048 / 60;
  private static final double LITRES_PER_MINUTE = 0.001 / 60;

  public FlowRate {
    if (!Double.isFinite(cubicMetresPerSecond)) {
      throw new IllegalArgumentException("not a finite flowrate: " + cubicMetresPerSecond);
    }
  }

  /** The flow rate of {@code value} cubic metres per second. */
  public static FlowRate ofCubicMetresPerSecond(double value) {
    return new FlowRate(value);
  }

  /** The flow rate of {@code value} US gallons per minute. */
  public static FlowRate ofGallonsPerMinute(double value) {
    return new FlowRate(value * GALLONS_PER_MINUTE);
  }

  /** The flow rate of {@code value} cubic feet per minute. */
  public static FlowRate ofCubicFeetPerMinute(double value) {
    return new FlowRate(value * CUBIC_FEET_PER_MINUTE);
  }

  /** The flow rate of {@code value} litres per minute. */
  public static FlowRate ofLitresPerMinute(double value) {
    return new FlowRate(value * LITRES_PER_MINUTE);
  }

  /** This flow rate in US gallons per minute. */
  public double gallonsPerMinute() {
    return cubicMetresPerSecond / GALLONS_PER_MINUTE;
  }

  /** This flow rate in cubic feet per minute. */
  public double cubicFeetPerMinute() {
    return cubicMetresPerSecond / CUBIC_FEET_PER_MINUTE;
  }

  /** This flow rate in litres per minute. */
  public double litresPerMinute() {
    return cubicMetresPerSecond / LITRES_PER_MINUTE;
  }

  /** The sum of both. */
  public FlowRate plus(FlowRate other) {
    return new FlowRate(cubicMetresPerSecond + other.cubicMetresPerSecond);
  }

  /** This less the other; may be negative. */
  public FlowRate minus(FlowRate other) {
    return new FlowRate(cubicMetresPerSecond - other.cubicMetresPerSecond);
  }

  /** This, {@code factor} times. */
  public FlowRate times(double factor) {
    return new FlowRate(cubicMetresPerSecond * factor);
  }

  @Override
  public int compareTo(FlowRate other) {
    return Double.compare(cubicMetresPerSecond, other.cubicMetresPerSecond);
  }
}
