package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.cli.report.Cautions;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.routing.line.LinePlanner;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.FloorSpace;
import org.coatrun.shared.line.KeepOut;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.SiteFacts;
import org.coatrun.shared.line.SlabOpening;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/** Buildings to draw; invented. */
final class SampleLines {

  private SampleLines() {}

  static DrawingJob job(String building, UnitSystem units, LineRequest request) {
    return new DrawingJob(building, units, request, LinePlanner.plan(request), Cautions.ALL);
  }

  /** A hall of one storey, 120 by 80 m, its steel too high for the hand. */
  static LineRequest hall() {
    var columns = new ArrayList<Region>();
    var work = new ArrayList<WorkPiece>();
    for (double x = 0.5; x < 120; x += 17) {
      for (double y = 0.5; y < 80; y += 15.8) {
        columns.add(square(x, y, 0.4));
      }
    }
    for (double y = 0.5; y < 80; y += 15.8) {
      for (double x = 0.5; x + 17 < 120.6; x += 17) {
        work.add(beam("G" + work.size(), x, y, x + 17, y, 9, 0.9, 0.4));
      }
    }
    for (double x = 0.5; x < 120; x += 17.0 / 4) {
      for (double y = 0.5; y + 15.8 < 80; y += 15.8) {
        work.add(beam("J" + work.size(), x, y, x, y + 15.8, 8.6, 0.5, 0.1));
      }
    }
    var floor =
        new FloorOutline(
            "Hall",
            Length.ZERO,
            Length.ofMetres(9.5),
            List.of(Region.rectangle(0, 0, 120, 80)),
            List.of(
                Region.rectangle(30, 20, 30.3, 45),
                Region.rectangle(30, 45, 52, 45.3),
                Region.rectangle(80, 60, 80.3, 80)),
            columns,
            List.of(),
            List.of());
    var site =
        new SiteFacts(
            List.of(new Vec2(60, -12)),
            Optional.of(new Vec2(2, 2)),
            Optional.of(new Vec2(110, -2)),
            Length.ofFeet(20),
            Length.ofFeet(20),
            Length.ZERO);
    return LineRequest.of(List.of(floor), work).withSite(site);
  }

  /** Office floors of 36 by 22 m with a core, a keep-out and spaces, as many as asked for. */
  static LineRequest office(int storeys) {
    var floors = new ArrayList<FloorOutline>();
    var work = new ArrayList<WorkPiece>();
    for (int f = 0; f < storeys; f++) {
      floors.add(officeFloor(f));
      bays(work, f, 4, 36, 22, 9);
    }
    LineRequest r = LineRequest.of(floors, work);
    var site =
        new SiteFacts(
            List.of(new Vec2(10, -6)),
            Optional.of(new Vec2(34, 1)),
            Optional.empty(),
            Length.ofFeet(20),
            Length.ofFeet(20),
            Length.ZERO);
    var keepOut = new KeepOut("Level 2", "switchgear", Region.rectangle(27, 13, 33, 19));
    var spot = new MachineSpot("loading dock", 0, new Vec2(8, 5), 0, List.of());
    return new LineRequest(
        floors,
        List.of(keepOut),
        List.of(),
        true,
        work,
        List.of(spot),
        0,
        site,
        r.limits(),
        r.reach(),
        r.costs(),
        r.stock(),
        r.utilities(),
        1,
        3000,
        r.wording());
  }

  private static FloorOutline officeFloor(int f) {
    var columns = new ArrayList<Region>();
    for (double x = 0.5; x < 36; x += 8.75) {
      for (double y = 0.5; y < 22; y += 7) {
        columns.add(square(x, y, 0.35));
      }
    }
    var openings =
        f == 0
            ? List.<SlabOpening>of()
            : List.of(
                new SlabOpening(
                    "stair 1", SlabOpening.Kind.STAIR, Region.rectangle(14.6, 9.5, 17, 14)),
                new SlabOpening(
                    "lift shaft", SlabOpening.Kind.SHAFT, Region.rectangle(18, 9.6, 20.4, 12)));
    return new FloorOutline(
        "Level " + (f + 1),
        Length.ofMetres(4 * f),
        Length.ofMetres(3.75),
        List.of(Region.rectangle(0, 0, 36, 22)),
        List.of(
            Region.rectangle(14, 9, 21, 9.25),
            Region.rectangle(14, 14.2, 21, 14.45),
            Region.rectangle(14, 9.25, 14.25, 12)),
        columns,
        openings,
        List.of(new FloorSpace("Open office", Volume.ofCubicMetres(2500))));
  }

  /** An L of 60 by 60 m with arms 20 m wide, a core in its corner, of two storeys. */
  static LineRequest ell() {
    var floors = new ArrayList<FloorOutline>();
    var work = new ArrayList<WorkPiece>();
    Region plate =
        Region.of(
            new Vec2(0, 0),
            new Vec2(60, 0),
            new Vec2(60, 20),
            new Vec2(20, 20),
            new Vec2(20, 60),
            new Vec2(0, 60));
    for (int f = 0; f < 2; f++) {
      var openings =
          f == 0
              ? List.<SlabOpening>of()
              : List.of(
                  new SlabOpening("stair", SlabOpening.Kind.STAIR, Region.rectangle(7, 7, 9.5, 12)),
                  new SlabOpening("", SlabOpening.Kind.SHAFT, Region.rectangle(10.5, 7, 12, 8.5)));
      floors.add(
          new FloorOutline(
              f == 0 ? "Ground floor" : "Upper floor",
              Length.ofMetres(4.2 * f),
              Length.ofMetres(3.9),
              List.of(plate),
              List.of(
                  Region.rectangle(6, 6, 13, 6.3),
                  Region.rectangle(6, 12.7, 13, 13),
                  Region.rectangle(6, 6.3, 6.3, 12.7)),
              List.of(),
              openings,
              List.of()));
      for (double y = 0.5; y < 60; y += 6.5) {
        double end = y < 20 ? 60 : 20;
        for (double x = 0.5; x + 6 < end; x += 6.5) {
          work.add(beam("B" + work.size(), x, y, x + 6.5, y, 4.2 * f + 3.6, 0.4, 0.06));
        }
      }
    }
    return LineRequest.of(floors, work);
  }

  /** Equal floors of 50 by 50 m around a core. */
  static LineRequest tower(int storeys) {
    var floors = new ArrayList<FloorOutline>();
    var work = new ArrayList<WorkPiece>();
    for (int f = 0; f < storeys; f++) {
      floors.add(towerFloor(f));
      bays(work, f, 4, 50, 50, 9);
    }
    return LineRequest.of(floors, work);
  }

  private static FloorOutline towerFloor(int f) {
    var columns = new ArrayList<Region>();
    for (double x = 1; x < 50; x += 9) {
      for (double y = 1; y < 50; y += 9) {
        if (Math.abs(x - 25) > 7 || Math.abs(y - 25) > 6) {
          columns.add(square(x, y, 0.5));
        }
      }
    }
    var openings =
        f == 0
            ? List.<SlabOpening>of()
            : List.of(
                new SlabOpening(
                    "stair A", SlabOpening.Kind.STAIR, Region.rectangle(19.5, 20.5, 22, 25)),
                new SlabOpening(
                    "duct shaft", SlabOpening.Kind.SHAFT, Region.rectangle(32, 24, 33.5, 26)),
                new SlabOpening(
                    "east chase", SlabOpening.Kind.CHASE, Region.rectangle(46, 3, 47, 4)));
    return new FloorOutline(
        "Level " + (f + 1),
        Length.ofMetres(4 * f),
        Length.ofMetres(3.8),
        List.of(Region.rectangle(0, 0, 50, 50)),
        List.of(
            Region.rectangle(19, 20, 31, 20.3),
            Region.rectangle(19, 29.7, 31, 30),
            Region.rectangle(19, 20.3, 19.3, 27.5),
            Region.rectangle(30.7, 22.5, 31, 29.7)),
        columns,
        openings,
        List.of());
  }

  private static void bays(
      List<WorkPiece> work, int f, double height, double width, double depth, double bay) {
    double under = (f + 1) * height - 0.5;
    for (double y = 0.5; y < depth; y += bay / 3) {
      for (double x = 0.5; x + bay / 2 <= width; x += bay) {
        double end = Math.min(x + bay, width - 0.5);
        work.add(beam("B" + (f + 1) + "-" + work.size(), x, y, end, y, under, 0.4, 0.18));
      }
    }
  }

  private static WorkPiece beam(
      String mark, double x0, double y0, double x1, double y1, double z, double d, double volume) {
    return new WorkPiece(
        mark,
        "",
        new Vec3(x0, y0, z),
        new Vec3(x1, y1, z),
        Length.ofMetres(d),
        Volume.ofCubicMetres(volume));
  }

  private static Region square(double x, double y, double side) {
    double h = side / 2;
    return Region.rectangle(x - h, y - h, x + h, y + h);
  }
}
