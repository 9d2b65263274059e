package org.coatrun.testmodels.ifc;

/** Units of length that a file may use. */
public enum LengthUnit {
  MILLIMETRE(0.001),
  METRE(1),
  INCH(0.0254),
  FOOT(0.3048);

  private final double metres;

  LengthUnit(double metres) {
    this.metres = metres;
  }

  /** Returns how many metres one unit is. */
  public double metres() {
    return metres;
  }

  /** Tells whether the unit is converted from the metre, in IFC's words. */
  public boolean isConverted() {
    return this == INCH || this == FOOT;
  }
}
