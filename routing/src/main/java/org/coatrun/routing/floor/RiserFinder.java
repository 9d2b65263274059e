package org.coatrun.routing.floor;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.line.SlabOpening;
import org.coatrun.shared.shape.Vec2;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Finds where a line can rise: openings that lie one above the other, stairs and chases among them.
 */
public final class RiserFinder {

  /** A pipe with its couplings and a hand beside it wants a clear foot: 0.3 m square. */
  private static final double LEAST_CLEAR = 0.3 * 0.3;

  private RiserFinder() {}

  /**
   * The risers through openings, from the lowest start up and from west to east. A riser goes on as
   * long as the next floor has an opening over what is still common to all below; the same openings
   * never make two risers.
   *
   * @param floors from the lowest up; the openings of a floor lead to the floor below it
   */
  public static List<Riser> throughOpenings(List<FloorOutline> floors) {
    var runs = new ArrayList<Run>();
    for (int f = 1; f < floors.size(); f++) {
      extend(runs, floors.get(f), f);
    }
    runs.sort(
        (a, b) ->
            a.first != b.first
                ? Integer.compare(a.first, b.first)
                : a.centre().x() != b.centre().x()
                    ? Double.compare(a.centre().x(), b.centre().x())
                    : Double.compare(a.centre().y(), b.centre().y()));
    var risers = new ArrayList<Riser>();
    for (Run run : runs) {
      risers.add(run.riser(risers.size() + 1));
    }
    return risers;
  }

  private static void extend(List<Run> runs, FloorOutline floor, int f) {
    for (SlabOpening opening : floor.openings()) {
      Geometry hole = Planar.union(List.of(opening.region()));
      boolean carried = false;
      for (Run run : runs) {
        carried |= run.last == f - 1 && run.goOn(hole, f);
      }
      if (!carried && hole.getArea() >= LEAST_CLEAR) {
        runs.add(new Run(opening, hole, f));
      }
    }
  }

  /** Openings one above the other, and what is common to them all. */
  private static final class Run {
    private final SlabOpening opening;
    private final int first;
    private Geometry common;
    private int last;

    Run(SlabOpening opening, Geometry hole, int floor) {
      this.opening = opening;
      this.common = hole;
      this.first = floor;
      this.last = floor;
    }

    boolean goOn(Geometry hole, int floor) {
      Geometry both = Planar.common(common, hole);
      if (both.getArea() < LEAST_CLEAR) {
        return false;
      }
      common = both;
      last = floor;
      return true;
    }

    Vec2 centre() {
      Coordinate c = common.getInteriorPoint().getCoordinate();
      return new Vec2(c.x, c.y);
    }

    Riser riser(int number) {
      Riser.Kind kind =
          switch (opening.kind()) {
            case SHAFT -> Riser.Kind.SLAB_OPENING;
            case STAIR -> Riser.Kind.STAIR;
            case CHASE -> Riser.Kind.CHASE;
          };
      String called = opening.name().isEmpty() ? word(kind) : opening.name();
      return new Riser("R" + number + " " + called, kind, centre(), first - 1, last);
    }

    private static String word(Riser.Kind kind) {
      return kind == Riser.Kind.STAIR ? "stair" : kind == Riser.Kind.CHASE ? "chase" : "opening";
    }
  }

  /**
   * Risers along the outside of the slabs on the side of truck access, about {@code spacing} metres
   * apart. Each goes up as long as the next slab has its edge within half a metre of it.
   */
  public static List<Riser> alongEdges(
      List<FloorOutline> floors, List<Vec2> access, double spacing, int number) {
    var risers = new ArrayList<Riser>();
    if (floors.size() < 2 || access.isEmpty()) {
      return risers;
    }
    List<Geometry> plates = floors.stream().map(f -> Planar.union(f.plate())).toList();
    for (Vec2 at : edgePoints(plates.get(1), access, spacing)) {
      int highest = 1;
      while (highest + 1 < floors.size() && onEdge(plates.get(highest + 1), at)) {
        highest++;
      }
      String name = "R" + (number + risers.size()) + " slab edge";
      risers.add(new Riser(name, Riser.Kind.SLAB_EDGE, at, 0, highest));
    }
    return risers;
  }

  private static boolean onEdge(Geometry plate, Vec2 at) {
    var point = Planar.FACTORY.createPoint(new Coordinate(at.x(), at.y()));
    return plate.getBoundary().distance(point) <= 0.5;
  }

  private static List<Vec2> edgePoints(Geometry plate, List<Vec2> access, double spacing) {
    var points = new ArrayList<Vec2>();
    for (Region piece : Planar.regions(plate, 1)) {
      List<Vec2> ring = piece.outline();
      boolean anticlockwise = Rings.signedArea(ring) > 0;
      for (int i = 0; i < ring.size(); i++) {
        Vec2 a = ring.get(i);
        Vec2 b = ring.get((i + 1) % ring.size());
        Vec2 out = b.minus(a).unit().left().times(anticlockwise ? -1 : 1);
        if (access.stream().anyMatch(q -> q.minus(a).dot(out) > 0)) {
          spread(a, b, spacing, points);
        }
      }
    }
    return points;
  }

  private static void spread(Vec2 a, Vec2 b, double spacing, List<Vec2> points) {
    int n = (int) Math.floor(a.distance(b) / spacing + 0.5);
    for (int i = 0; i < n; i++) {
      points.add(a.plus(b.minus(a).times((i + 0.5) / n)));
    }
  }
}
