package org.coatrun.geometry.profile;

/** A side of a section's bounding box. */
public enum Side {
  LEFT,
  RIGHT,
  BOTTOM,
  TOP
}
