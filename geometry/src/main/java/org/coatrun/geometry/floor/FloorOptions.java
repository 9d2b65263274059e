package org.coatrun.geometry.floor;

/**
 * By what rules floors are cut, in metres and square metres; the values are our own choices.
 *
 * @param ankle height above the slab at which obstacles are cut
 * @param stepHeight obstacles that do not rise this high above the slab are stepped over
 * @param sameLevel slabs whose tops are this near belong to one floor
 * @param joint gaps between slabs up to twice this are closed
 * @param leastFloor floors smaller than this are not floors to work from
 * @param leastOpening openings smaller than this are sleeves: neither obstacle nor way up
 * @param standingWall walls of unknown material at least this thick stand before the spraying
 * @param bay half of the widest bay that an assumed floor closes
 * @param headroom steel this far above a deck makes it a floor to work from
 */
public record FloorOptions(
    double ankle,
    double stepHeight,
    double sameLevel,
    double joint,
    double leastFloor,
    double leastOpening,
    double standingWall,
    double bay,
    double headroom) {

  /** Ankle at 0.15 m, levels within 0.45 m, joints of 0.1 m, bays of up to 15 m. */
  public static FloorOptions defaults() {
    return new FloorOptions(0.15, 1.0, 0.45, 0.05, 6, 0.04, 0.15, 7.5, 1.5);
  }
}
