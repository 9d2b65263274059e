package org.coatrun.testmodels.ifc;

/** The schemas that the generator writes. */
public enum Schema {
  IFC2X3,
  IFC4,
  IFC4X3_ADD2;

  /** Tells whether the schema is IFC2X3. */
  public boolean isOld() {
    return this == IFC2X3;
  }
}
