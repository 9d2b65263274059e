package org.coatrun.shared.rules;

import org.coatrun.shared.units.Length;

/** Water hose by nominal inside diameter, with the friction coefficient of fire service texts. */
public enum HoseSize {
  THREE_QUARTERS("3/4 in", 0.75, 1100),
  ONE("1 in", 1, 150),
  ONE_AND_QUARTER("1-1/4 in", 1.25, 80),
  ONE_AND_HALF("1-1/2 in", 1.5, 24),
  ONE_AND_THREE_QUARTERS("1-3/4 in", 1.75, 15.5),
  TWO("2 in", 2, 8),
  TWO_AND_HALF("2-1/2 in", 2.5, 2),
  THREE("3 in", 3, 0.677),
  FOUR("4 in", 4, 0.2),
  FIVE("5 in", 5, 0.08);

  private final String word;
  private final double inches;
  private final double coefficient;

  HoseSize(String word, double inches, double coefficient) {
    this.word = word;
    this.inches = inches;
    this.coefficient = coefficient;
  }

  /** The size as the trade writes it. */
  public String word() {
    return word;
  }

  /** Nominal inside diameter. */
  public Length diameter() {
    return Length.ofInches(inches);
  }

  /** C of the friction formula C (Q/100)^2 (L/100). */
  public double coefficient() {
    return coefficient;
  }

  /** As files write it. */
  @Override
  public String toString() {
    return word;
  }
}
