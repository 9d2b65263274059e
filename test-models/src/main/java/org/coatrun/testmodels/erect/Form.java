package org.coatrun.testmodels.erect;

/** How the body of a member is written. */
public enum Form {
  /** An extrusion; copes as polygonal half-spaces. */
  HALF_SPACES,
  /** An extrusion; copes as boxes that are subtracted. */
  BOXES,
  /** An extrusion; copes as opening elements. */
  OPENINGS,
  /** An extrusion by way of a map that is used more than once. */
  MAPPED,
  /** As mapped, but start and end change places. */
  MIRRORED,
  /** Flat faces. */
  BREP,
  /** Triangles. */
  TRIANGLES
}
