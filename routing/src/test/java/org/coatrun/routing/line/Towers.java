package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.SlabOpening;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/** Towers of equal floors around a core, with columns, stairs and steel; invented. */
record Towers(List<FloorOutline> floors, List<WorkPiece> work) {

  /**
   * @param side of the square floor in metres
   * @param bay between columns in metres
   */
  static Towers of(int storeys, double storeyHeight, double side, double bay) {
    var floors = new ArrayList<FloorOutline>();
    var work = new ArrayList<WorkPiece>();
    for (int f = 0; f < storeys; f++) {
      floors.add(floor(f, storeyHeight, side, bay));
      steel(f, storeyHeight, side, bay, work);
    }
    return new Towers(floors, work);
  }

  private static FloorOutline floor(int f, double height, double side, double bay) {
    double m = side / 2;
    List<Region> core =
        List.of(
            Region.rectangle(m - 6, m - 5, m + 6, m - 4.7),
            Region.rectangle(m - 6, m + 4.7, m + 6, m + 5),
            Region.rectangle(m - 6, m - 4.7, m - 5.7, m + 2.5),
            Region.rectangle(m + 5.7, m - 2.5, m + 6, m + 4.7));
    var columns = new ArrayList<Region>();
    for (double x = 1; x < side; x += bay) {
      for (double y = 1; y < side; y += bay) {
        if (Math.abs(x - m) > 7 || Math.abs(y - m) > 6) {
          columns.add(Region.rectangle(x - 0.25, y - 0.25, x + 0.25, y + 0.25));
        }
      }
    }
    List<SlabOpening> openings =
        f == 0
            ? List.of()
            : List.of(
                new SlabOpening(
                    "stair A",
                    SlabOpening.Kind.STAIR,
                    Region.rectangle(m - 5.5, m - 4.5, m - 3, m)),
                new SlabOpening(
                    "duct shaft",
                    SlabOpening.Kind.SHAFT,
                    Region.rectangle(m + 7, m - 1, m + 8.5, m + 1)),
                new SlabOpening(
                    "east chase",
                    SlabOpening.Kind.CHASE,
                    Region.rectangle(side - 4, 3, side - 3, 4)));
    return new FloorOutline(
        "Level " + (f + 1),
        Length.ofMetres(f * height),
        Length.ofMetres(height - 0.2),
        List.of(Region.rectangle(0, 0, side, side)),
        core,
        columns,
        openings,
        List.of());
  }

  private static void steel(int f, double height, double side, double bay, List<WorkPiece> work) {
    double under = (f + 1) * height - 0.5;
    for (double y = 1; y < side; y += bay / 3) {
      for (double x = 1; x + bay <= side; x += bay) {
        work.add(
            new WorkPiece(
                "B" + (f + 1) + "-" + work.size(),
                "",
                new Vec3(x, y, under),
                new Vec3(x + bay, y, under),
                Length.ofMetres(0.4),
                Volume.ofCubicMetres(0.02 * bay)));
      }
    }
  }
}
