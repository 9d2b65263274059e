package org.coatrun.cli.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SlabOpening;
import org.coatrun.shared.line.Wording;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.shape.Vec2;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The line of the demonstration building: floors by hand, limits kept, ways that answer to sense.
 */
class DemonstrationLineTest {

  private static final double FOOT = 0.3048;
  private static final double NOISE = 1e-6;

  /** Metres; the free area keeps to tenths of a millimetre. */
  private static final double GRAIN = 0.002;

  private static Takeoff takeoff;
  private static LineWork work;
  private static LineResult found;

  @BeforeAll
  static void plan() throws CommandFailure {
    Path file = Path.of("..", "test-models", "harbour-office.ifc");
    Building building =
        IfcImport.read(List.of(file), ImportOptions.DEFAULT, ProgressListener.silent());
    takeoff =
        TakeoffAssembly.assemble(
            building,
            SurfaceTakeoff.measure(building, SurfaceOptions.defaults(), (done, total) -> {}));
    work = LineWork.nominal(takeoff);
    found = plan("");
  }

  private static LineResult plan(String yaml) throws CommandFailure {
    return LineResult.of(takeoff, work, Job.parse("job.yaml", yaml), UnitSystem.US, List.of());
  }

  /**
   * By hand, from the drawing: the slab of 30.3 by 20.3 m less stair 2 (2.24 by 4.8 m), stair 1
   * (2.4 by 5 m), two lifts (2.3 by 2.15 m each) and the duct shaft (2 by 1.4 m); core walls carry
   * over the door sills.
   */
  @Test
  void workWithoutAThicknessOfItsOwnIsPlannedWithANominalOneAndSaid() {
    assertThat(work.findings(Wording.customary()))
        .singleElement()
        .satisfies(f -> assertThat(f.code()).isEqualTo(LineFinding.NOMINAL_THICKNESS));
  }

  @Test
  void floorsAreTheSlabsLessTheirOpenings() {
    double upper = 30.3 * 20.3 - 2.24 * 4.8 - 2.4 * 5 - 2 * 2.3 * 2.15 - 2 * 1.4;
    // the middle row between the core's outer faces and the edges, and the core less its openings
    double core = 7.8 * 7.3;
    double middle = 30.3 * (13.65 - 6.35) - 2.4 * 5 - 2 * 2.3 * 2.15 - 2 * 1.4;
    assertThat(middle).isGreaterThan(core);
    List<FloorOutline> floors = found.request().floors();
    assertThat(floors)
        .extracting(FloorOutline::storey)
        .containsExactly("Level 1", "Level 2", "Level 3", "Level 4", "Level 5", "Roof");
    assertThat(floors)
        .extracting(f -> Math.round(1000 * f.elevation().metres()))
        .containsExactly(0L, 4500L, 8500L, 12500L, 16500L, 20500L);
    assertThat(area(floors.get(0).plate())).isCloseTo(34 * 27.5, within(1e-3));
    for (int f = 1; f <= 4; f++) {
      assertThat(area(floors.get(f).plate())).isCloseTo(upper, within(1e-3));
      assertThat(floors.get(f).openings()).hasSize(5);
      assertThat(floors.get(f).openings().stream().map(SlabOpening::kind))
          .filteredOn(k -> k == SlabOpening.Kind.STAIR)
          .hasSize(2);
      assertThat(floors.get(f).columns()).hasSize(16);
    }
    assertThat(area(floors.get(5).plate())).isCloseTo(middle, within(1e-3));
  }

  @Test
  void everyPlaceHasALineOrAReasonAndNoSteelIsLost() {
    LinePlan plan = found.plan();
    assertThat(plan.routes()).hasSameSizeAs(plan.cells());
    assertThat(plan.routes())
        .allMatch(r -> r instanceof Route || (r instanceof NoRoute n && !n.sentence().isBlank()));
    double cells = plan.cells().stream().mapToDouble(c -> c.coating().cubicMetres()).sum();
    double lost = plan.groundless().stream().mapToDouble(p -> p.coating().cubicMetres()).sum();
    double asked =
        work.pieces().stream().map(WorkPiece::coating).mapToDouble(v -> v.cubicMetres()).sum();
    assertThat(cells + lost).isCloseTo(asked, within(1e-9 * asked));
    double exposed = takeoff.memberTotals().exposed().squareMetres();
    assertThat(asked).isCloseTo(exposed * 0.0254, within(1e-6 * exposed));
  }

  /** Limits are common practice; each is added up anew from the legs. */
  @Test
  void everyLineKeepsTheLimits() {
    LinePlan plan = found.plan();
    for (int c = 0; c < plan.cells().size(); c++) {
      if (plan.routes().get(c) instanceof Route route) {
        double flexible = 0;
        double hoseRise = 0;
        for (Leg leg : route.legs()) {
          flexible += leg.kind().flexible() ? leg.laid().metres() : 0;
          hoseRise += leg.kind() == Leg.Kind.RISER_HOSE ? leg.taut().metres() : 0;
          assertThat(leg.laid().metres()).isGreaterThanOrEqualTo(leg.taut().metres() - NOISE);
        }
        assertThat(flexible).isLessThanOrEqualTo(250 * FOOT + NOISE);
        assertThat(hoseRise).isLessThanOrEqualTo(36 * FOOT + NOISE);
        int machine = plan.machines().get(0).floor();
        if (hoseRise > 0) {
          assertThat(plan.cells().get(c).floor() - machine).isLessThanOrEqualTo(3);
        }
        Leg last = route.legs().get(route.legs().size() - 1);
        assertThat(last.kind()).isEqualTo(Leg.Kind.WHIP);
        assertThat(last.laid().metres()).isLessThanOrEqualTo(25 * FOOT + NOISE);
      }
    }
  }

  @Test
  void hoseLiesOnFreeFloorFromEndToEnd() {
    for (Route route : routes(found.plan())) {
      for (Leg leg : route.legs()) {
        if (leg.kind() == Leg.Kind.HOSE) {
          FloorPlan floor = found.plan().floors().get(leg.floor());
          double length = 0;
          for (int i = 1; i < leg.path().size(); i++) {
            Vec2 a = leg.path().get(i - 1);
            Vec2 b = leg.path().get(i);
            length += a.distance(b);
            for (int k = 1; k < 20; k++) {
              requireFree(floor.free(), a.plus(b.minus(a).times(k / 20.0)));
            }
          }
          assertThat(leg.taut().metres()).isCloseTo(length, within(1e-6));
        }
      }
    }
  }

  @Test
  void standpipeStandsWhereTheTradeAsksForIt() {
    for (FloorPlan floor : found.plan().floors()) {
      floor
          .check()
          .ifPresent(
              c -> {
                boolean asked =
                    Math.abs(c.rise().feet()) > 36 + NOISE
                        || c.storeys() > 3
                        || c.standpipe().stream().anyMatch(s -> s.contains("by hose alone"));
                assertThat(!c.standpipe().isEmpty()).isEqualTo(asked);
              });
    }
  }

  /** A foot away, no way over the machine's own floor is more than a foot longer or shorter. */
  @Test
  void movingTheMachineAFootMovesNoWayByMore() throws CommandFailure {
    List<Double> here = groundWays(plan(spot(3.5, 9.7)).plan());
    List<Double> there = groundWays(plan(spot(3.5 + FOOT, 9.7)).plan());
    assertThat(here).isNotEmpty().hasSameSizeAs(there);
    for (int i = 0; i < here.size(); i++) {
      assertThat(there.get(i)).isCloseTo(here.get(i), within(FOOT + GRAIN));
    }
  }

  @Test
  void closingTheCoresSouthDoorShortensNoWay() throws CommandFailure {
    String door =
        "keep-outs: [{name: door, storey: Level 1, zone: [[18 m, 6.2 m], [19.8 m, 6.2 m],"
            + " [19.8 m, 6.8 m], [18 m, 6.8 m]]}]";
    List<Double> open = groundWays(plan(spot(3.5, 9.7)).plan());
    List<Double> shut = groundWays(plan(spot(3.5, 9.7) + "  " + door + "\n").plan());
    assertThat(open).hasSameSizeAs(shut);
    for (int i = 0; i < open.size(); i++) {
      assertThat(shut.get(i)).isGreaterThanOrEqualTo(open.get(i) - GRAIN);
    }
  }

  private static String spot(double x, double y) {
    return String.format(
        Locale.ROOT,
        "site:%n  machine-spots: [{name: M, storey: Level 1, at: [%.4f m, %.4f m]}]%n",
        x,
        y);
  }

  /** Hose from the machine to each place on its own floor, pulled taut, whip left out. */
  private static List<Double> groundWays(LinePlan plan) {
    var ways = new ArrayList<Double>();
    IntStream.range(0, plan.cells().size())
        .filter(c -> plan.cells().get(c).floor() == 0)
        .forEach(
            c -> {
              Route route = (Route) plan.routes().get(c);
              assertThat(route.pipe().metres()).isZero();
              ways.add(
                  route.legs().stream()
                      .filter(l -> l.kind() == Leg.Kind.HOSE)
                      .mapToDouble(l -> l.taut().metres())
                      .sum());
            });
    return ways;
  }

  private static List<Route> routes(LinePlan plan) {
    return plan.routes().stream().filter(Route.class::isInstance).map(Route.class::cast).toList();
  }

  /** On the edge of an obstacle counts as free: hose goes round corners. */
  private static void requireFree(List<Region> free, Vec2 at) {
    boolean near = false;
    for (int i = 0; i < 9 && !near; i++) {
      Vec2 q = new Vec2(at.x() + (i % 3 - 1) * GRAIN, at.y() + (i / 3 - 1) * GRAIN);
      near = free.stream().anyMatch(r -> r.contains(q));
    }
    assertThat(near).as("free floor at %s", at).isTrue();
  }

  private static double area(List<Region> regions) {
    return regions.stream().mapToDouble(Region::area).sum();
  }
}
