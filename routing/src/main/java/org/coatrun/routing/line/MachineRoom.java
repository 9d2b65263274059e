package org.coatrun.routing.line;

import java.util.List;
import org.coatrun.routing.floor.FreeArea;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** Where on a floor there is room for a machine and its bags. */
final class MachineRoom {

  /** The machine may stand this near to what is not free, in metres. */
  private static final double SLIT = 0.02;

  private final FloorOutline floor;
  private final List<Region> keepOuts;
  private final Length longer;
  private final Length shorter;

  MachineRoom(LineRequest request, int index) {
    floor = request.floors().get(index);
    keepOuts = request.keepOutsOf(floor);
    longer = request.site().roomLength();
    shorter = request.site().roomWidth();
  }

  /**
   * Middles around which there is room for a square of the shorter side; on the assumed ground
   * alone, where there is any.
   */
  FreeArea narrow() {
    return toStand(shorter.times(0.5));
  }

  /** All that is free to stand on, nothing kept clear of. */
  FreeArea all() {
    return toStand(Length.ZERO);
  }

  /** No machine stands half on the edge of a slab. */
  private FreeArea toStand(Length margin) {
    return floor.ground().isEmpty()
        ? FreeArea.of(floor, keepOuts, margin)
        : FreeArea.ofGround(floor, keepOuts, margin);
  }

  /** Whether the rectangle fits along x or along y around a middle. */
  boolean fits(Vec2 at, FreeArea all) {
    double l = longer.metres() / 2 - SLIT;
    double w = shorter.metres() / 2 - SLIT;
    return all.holds(at.x() - l, at.y() - w, at.x() + l, at.y() + w)
        || all.holds(at.x() - w, at.y() - l, at.x() + w, at.y() + l);
  }

  /** Whether a point lies in or beside a clear square of the shorter side. */
  boolean beside(Vec2 at) {
    Length half = shorter.times(0.5);
    return FreeArea.of(floor, keepOuts, half).nearest(at, half.times(Math.sqrt(2))).isPresent();
  }
}
