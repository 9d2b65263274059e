package org.coatrun.routing.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.coatrun.routing.network.AllPipePaths;
import org.coatrun.routing.network.PipeNetwork;
import org.coatrun.routing.network.SmallRoom;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LineCosts;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.Test;

/**
 * The cheapest line that keeps the limit on hose, against trying every line: hose from the machine,
 * or hose to pipe, every way of the pipe to every outlet, and hose from there.
 */
class LimitedLineTest {

  private static final double MARGIN = 0.15;
  private static final double SPACING = 9.144;
  private static final double BEND = 1.5;
  private static final LineCosts COSTS = new LineCosts(100, 50, 9, 2.2, 3, 40, 0, 0);

  private final int[] kinds = new int[3];

  @Test
  void theLineIsTheBestOfAllThatKeepTheLimit() {
    for (long number = 0; number < 60; number++) {
      check(number);
    }
    // By hose alone, by pipe, and not at all: each happens, so that each was compared.
    assertThat(kinds[0]).isGreaterThan(8);
    assertThat(kinds[1]).isGreaterThan(8);
    assertThat(kinds[2]).isGreaterThan(3);
  }

  private void check(long number) {
    SmallRoom room = SmallRoom.of(number);
    var random = new Random(number);
    Vec2 machine = room.point(random);
    Vec2 work = room.point(random);
    // Between a third of the diagonal and a bit more than all of it, without whip and slack.
    double limit = Math.hypot(room.width(), room.depth()) * (0.15 + 0.9 * random.nextDouble());
    LineRequest request = request(room, machine, work, limit);
    LinePlan plan = LinePlanner.plan(request);
    WorkCell cell = plan.cells().get(0);
    double least = least(request, room.free().regions(), machine, cell, limit);
    String which = "room " + number;
    assertThat(plan.proof().optimal()).as(which).isTrue();
    if (plan.routes().get(0) instanceof Route route) {
      assertThat(plan.proof().cost()).as(which).isCloseTo(least, within(1e-6 * least));
      assertThat(route.flexible().metres()).isLessThanOrEqualTo(limit + 1e-6);
      kinds[route.pipe().metres() > 0 ? 1 : 0]++;
    } else {
      assertThat(least).as(which).isInfinite();
      assertThat(((NoRoute) plan.routes().get(0)).over().metres()).isPositive();
      kinds[2]++;
    }
  }

  private static double least(
      LineRequest request, List<Region> free, Vec2 machine, WorkCell cell, double limit) {
    double weight = COSTS.breakdown() * cell.coating().cubicMetres();
    double direct = AllPipePaths.hose(free, machine, cell.at());
    double best = direct <= limit + 1e-6 ? weight * direct : Double.POSITIVE_INFINITY;
    var pipes = new PipeNetwork(free, List.of(), MARGIN, SPACING);
    var site = new FloorSite(request.floors().get(0), List.of(), request.limits());
    double tail = Double.POSITIVE_INFINITY;
    Vec2 begins = machine;
    for (Vec2 node : pipes.nodes()) {
      Vec2 beside = site.free().nearest(node, Length.ofMetres(0.01)).orElseThrow();
      double hose = AllPipePaths.hose(free, machine, beside);
      if (hose < tail) {
        tail = hose;
        begins = beside;
      }
    }
    for (FloorSite.Outlet outlet : site.outlets()) {
      double flexible = tail + AllPipePaths.hose(free, outlet.point(), cell.at());
      if (flexible <= limit + 1e-6) {
        double pipe = AllPipePaths.best(pipes, free, begins, outlet.node(), BEND).length();
        double cost = COSTS.hosePerMetre() * tail + COSTS.pipePerMetre() * pipe;
        best = Math.min(best, cost + weight * flexible);
      }
    }
    return best + COSTS.machine() + COSTS.outlet();
  }

  private static LineRequest request(SmallRoom room, Vec2 machine, Vec2 work, double limit) {
    var floor =
        new FloorOutline(
            "Room",
            Length.ZERO,
            Length.ofMetres(4),
            List.of(room.plate()),
            room.walls(),
            List.of(),
            List.of(),
            List.of());
    var piece =
        new WorkPiece(
            "C1",
            "",
            new Vec3(work.x(), work.y(), 0),
            new Vec3(work.x(), work.y(), 3),
            Length.ofMetres(0.3),
            Volume.ofCubicMetres(0.3));
    LineRequest plain = LineRequest.of(List.of(floor), List.of(piece));
    return new LineRequest(
        plain.floors(),
        List.of(),
        List.of(),
        false,
        plain.work(),
        List.of(new MachineSpot("here", 0, machine, 0, List.of())),
        0,
        plain.site(),
        limits(limit),
        plain.reach(),
        COSTS,
        plain.stock(),
        plain.utilities(),
        1,
        3000,
        plain.wording());
  }

  /** No whip, no slack, no bend radius: lengths as they lie. */
  private static LineLimits limits(double flexible) {
    LineLimits cp = LineLimits.commonPractice();
    return new LineLimits(
        Length.ofMetres(flexible),
        cp.hoseRise(),
        cp.hoseStoreys(),
        Length.ZERO,
        cp.tail(),
        Length.ZERO,
        0,
        cp.margin(),
        cp.outletSpacing(),
        cp.riserGap(),
        cp.machineLift(),
        cp.machineEquivalent());
  }
}
