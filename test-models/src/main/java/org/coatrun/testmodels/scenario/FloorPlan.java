package org.coatrun.testmodels.scenario;

/**
 * A rectangular grid of bays with a concrete core over some of them.
 *
 * @param baysX number of bays along x
 * @param baysY number of bays along y
 * @param bay length of a bay in metres, both ways
 * @param coreX first bay of the core along x
 * @param coreY first bay of the core along y
 * @param coreBaysX how many bays the core is long, 0 for no core
 * @param coreBaysY how many bays the core is wide
 * @param cutX bays that are missing at the upper right along x, which makes an L
 * @param cutY bays that are missing there along y
 */
record FloorPlan(
    int baysX,
    int baysY,
    double bay,
    int coreX,
    int coreY,
    int coreBaysX,
    int coreBaysY,
    int cutX,
    int cutY) {

  /** A rectangle with a core of two by one bays in its middle, where there is room. */
  static FloorPlan tower(int baysX, int baysY, double bay) {
    int coreX = baysX >= 4 ? 2 : 0;
    int coreY = baysY >= 3 ? 1 : 0;
    return new FloorPlan(
        baysX, baysY, bay, (baysX - coreX) / 2, (baysY - coreY) / 2, coreX, coreY, 0, 0);
  }

  /** Tells whether a bay has a floor of deck: within the plate and outside the core. */
  boolean hasDeck(int x, int y) {
    return isFloor(x, y) && !isCore(x, y);
  }

  /** Tells whether a bay lies within the plate. */
  boolean isFloor(int x, int y) {
    boolean inside = x >= 0 && y >= 0 && x < baysX && y < baysY;
    return inside && !(x >= baysX - cutX && y >= baysY - cutY);
  }

  /** Tells whether a bay belongs to the core. */
  boolean isCore(int x, int y) {
    return x >= coreX && x < coreX + coreBaysX && y >= coreY && y < coreY + coreBaysY;
  }

  /** Tells whether the core's wall takes the place of a column. */
  boolean hasColumn(int x, int y) {
    boolean touches =
        isFloor(x, y) || isFloor(x - 1, y) || isFloor(x, y - 1) || isFloor(x - 1, y - 1);
    boolean core = isCore(x, y) || isCore(x - 1, y) || isCore(x, y - 1) || isCore(x - 1, y - 1);
    return touches && !core;
  }
}
