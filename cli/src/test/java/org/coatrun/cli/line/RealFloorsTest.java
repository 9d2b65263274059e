package org.coatrun.cli.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coatrun.routing.floor.FreeArea;
import org.coatrun.routing.line.LinePlanner;
import org.coatrun.routing.network.FloorNetwork;
import org.coatrun.routing.network.Target;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Ways over the floors of real buildings, from and to places drawn at random by a fixed number. */
class RealFloorsTest {

  private static final double FOOT = 0.3048;
  private static final double EXACT = 1e-9;

  /** The free area keeps to tenths of a millimetre; a way round many corners gathers some. */
  private static final double GRAIN = 1e-3;

  private static final Length NEAR = Length.ofMillimetres(1);

  @ParameterizedTest
  @EnumSource(
      value = PlannedBuilding.class,
      names = {"DEMONSTRATION", "L_SHAPED", "HALL"})
  void aFootOfMoveNeverChangesAWayByMore(PlannedBuilding building) {
    int compared = 0;
    for (FloorOutline floor : building.request().floors()) {
      FreeArea free = free(building, floor, List.of());
      var network = new FloorNetwork(free.regions());
      var random = new Random(17);
      List<Target> to = targets(network, points(floor, free, random, 12));
      for (Vec2 here : points(floor, free, random, 25)) {
        double way = 2 * Math.PI * random.nextDouble();
        Vec2 there = here.plus(new Vec2(FOOT * Math.cos(way), FOOT * Math.sin(way)));
        if (free.contains(there)
            && length(network, here, new Target(network, there)) <= FOOT + EXACT) {
          compared += compare(network, here, there, to);
        }
      }
    }
    assertThat(compared).isGreaterThan(100);
  }

  private static int compare(FloorNetwork network, Vec2 here, Vec2 there, List<Target> to) {
    int compared = 0;
    for (Target target : to) {
      double before = length(network, here, target);
      double after = length(network, there, target);
      if (Double.isInfinite(before)) {
        assertThat(after).isInfinite();
      } else {
        assertThat(Math.abs(after - before)).isLessThanOrEqualTo(FOOT + EXACT);
        compared++;
      }
    }
    return compared;
  }

  /** Beside a wall's end, where doors are, and anywhere. */
  @ParameterizedTest
  @EnumSource(
      value = PlannedBuilding.class,
      names = {"DEMONSTRATION", "L_SHAPED", "HALL"})
  void whatBlocksADoorOrThePlateNeverShortensAWay(PlannedBuilding building) {
    int longer = 0;
    for (FloorOutline floor : building.request().floors()) {
      FreeArea open = free(building, floor, List.of());
      var before = new FloorNetwork(open.regions());
      var random = new Random(23);
      List<Vec2> points = points(floor, open, random, 10);
      for (Region block : blocks(floor, random)) {
        FreeArea shut = free(building, floor, List.of(block));
        var after = new FloorNetwork(shut.regions());
        List<Vec2> still = points.stream().filter(shut::contains).toList();
        for (Vec2 from : still.subList(0, Math.min(4, still.size()))) {
          for (Vec2 to : still) {
            double was = length(before, from, new Target(before, to));
            double is = length(after, from, new Target(after, to));
            assertThat(is).isGreaterThanOrEqualTo(was - GRAIN);
            longer += is > was + 0.1 ? 1 : 0;
          }
        }
      }
    }
    assertThat(longer).isPositive();
  }

  /** Each shaft in use, shut in turn. */
  @Test
  void shuttingAShaftNeverMakesAPlanCheaperOrReachMore() {
    LineRequest request = PlannedBuilding.L_SHAPED.request();
    LinePlan open = PlannedBuilding.L_SHAPED.plan();
    assertThat(open.proof().optimal()).isTrue();
    List<Riser> known = open.candidates();
    LineRequest fixed = request.withSpots(open.machines(), 1);
    LinePlan all = LinePlanner.plan(fixed.withRisers(known, false));
    for (Riser used : all.risers().stream().map(u -> u.riser()).toList()) {
      List<Riser> rest = known.stream().filter(r -> !r.equals(used)).toList();
      LinePlan shut = LinePlanner.plan(fixed.withRisers(rest, false));
      assertThat(left(shut)).isGreaterThanOrEqualTo(left(all));
      if (left(shut) == left(all)) {
        assertThat(shut.proof().cost()).isGreaterThanOrEqualTo(all.proof().cost() * (1 - 1e-9));
      }
    }
    assertThat(all.risers()).isNotEmpty();
  }

  private static long left(LinePlan plan) {
    return plan.routes().stream().filter(NoRoute.class::isInstance).count();
  }

  private static FreeArea free(PlannedBuilding building, FloorOutline floor, List<Region> more) {
    var keepOuts = new ArrayList<>(building.request().keepOutsOf(floor));
    keepOuts.addAll(more);
    return FreeArea.of(floor, keepOuts, building.request().limits().margin());
  }

  private static List<Target> targets(FloorNetwork network, List<Vec2> points) {
    return points.stream().map(p -> new Target(network, p)).toList();
  }

  private static double length(FloorNetwork network, Vec2 from, Target to) {
    return network.from(from).to(to).orElse(Double.POSITIVE_INFINITY);
  }

  private static List<Vec2> points(FloorOutline floor, FreeArea free, Random random, int count) {
    double[] box = box(floor);
    var points = new ArrayList<Vec2>();
    while (points.size() < count) {
      double x = box[0] + (box[2] - box[0]) * random.nextDouble();
      double y = box[1] + (box[3] - box[1]) * random.nextDouble();
      free.nearest(new Vec2(x, y), NEAR).ifPresent(points::add);
    }
    return points;
  }

  private static List<Region> blocks(FloorOutline floor, Random random) {
    double[] box = box(floor);
    var blocks = new ArrayList<Region>();
    for (Region wall : floor.walls()) {
      Vec2 corner = wall.outline().get(random.nextInt(wall.outline().size()));
      blocks.add(square(corner, 1.5));
    }
    for (int i = 0; i < 4; i++) {
      double x = box[0] + (box[2] - box[0]) * random.nextDouble();
      double y = box[1] + (box[3] - box[1]) * random.nextDouble();
      blocks.add(square(new Vec2(x, y), 1 + 3 * random.nextDouble()));
    }
    return blocks;
  }

  private static Region square(Vec2 at, double half) {
    return Region.rectangle(at.x() - half, at.y() - half, at.x() + half, at.y() + half);
  }

  private static double[] box(FloorOutline floor) {
    double[] box = {1e9, 1e9, -1e9, -1e9};
    for (Region r : floor.plate()) {
      for (Vec2 p : r.outline()) {
        box[0] = Math.min(box[0], p.x());
        box[1] = Math.min(box[1], p.y());
        box[2] = Math.max(box[2], p.x());
        box[3] = Math.max(box[3], p.y());
      }
    }
    return box;
  }
}
