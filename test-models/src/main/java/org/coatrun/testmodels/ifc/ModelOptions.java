package org.coatrun.testmodels.ifc;

import org.coatrun.testmodels.shape.Vec3;

/**
 * How a scenario is written; the building itself is the same whatever stands here.
 *
 * @param rotationDegrees turn of the site about the vertical
 * @param tiltDegrees turn of the site about its first axis, for tests of invariance only
 * @param offset move of the site in metres
 * @param seed start of the GlobalIds
 */
public record ModelOptions(
    Schema schema,
    LengthUnit unit,
    double rotationDegrees,
    double tiltDegrees,
    Vec3 offset,
    long seed) {
  /** IFC4 in millimetres, where it stands. */
  public static final ModelOptions DEFAULT =
      new ModelOptions(Schema.IFC4, LengthUnit.MILLIMETRE, 0, 0, Vec3.ZERO, 1);

  /** Returns the same in another schema. */
  public ModelOptions with(Schema other) {
    return new ModelOptions(other, unit, rotationDegrees, tiltDegrees, offset, seed);
  }

  /** Returns the same in another unit. */
  public ModelOptions with(LengthUnit other) {
    return new ModelOptions(schema, other, rotationDegrees, tiltDegrees, offset, seed);
  }

  /** Returns the same, turned and moved. */
  public ModelOptions placed(double rotation, double tilt, Vec3 move) {
    return new ModelOptions(schema, unit, rotation, tilt, move, seed);
  }
}
