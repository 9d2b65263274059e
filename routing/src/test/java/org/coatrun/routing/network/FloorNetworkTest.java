package org.coatrun.routing.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FloorNetworkTest {

  private static final double FOOT = 0.3048;

  @Test
  void aHoseInTheOpenRunsStraight() {
    assertThat(length(List.of(Region.rectangle(0, 0, 10, 10)), new Vec2(1, 1), new Vec2(4, 5)))
        .isEqualTo(5);
  }

  @Test
  void aHoseGoesTautAroundAWall() {
    // Two right triangles of 3, 4 and 5 m over a wall of no other way around.
    var free =
        Region.of(
            new Vec2(0, 0),
            new Vec2(4, 0),
            new Vec2(4, 3),
            new Vec2(6, 3),
            new Vec2(6, 0),
            new Vec2(10, 0),
            new Vec2(10, 9),
            new Vec2(0, 9));
    var network = new FloorNetwork(List.of(free));
    var path =
        network.from(new Vec2(0, 0)).pathTo(new Target(network, new Vec2(10, 0))).orElseThrow();
    assertThat(path.length()).isCloseTo(5 + 2 + 5, within(1e-12));
    assertThat(path.points())
        .containsExactly(new Vec2(0, 0), new Vec2(4, 3), new Vec2(6, 3), new Vec2(10, 0));
    assertThat(path.turns()).allSatisfy(t -> assertThat(t).isCloseTo(0.6435, within(1e-4)));
  }

  @Test
  void noHoseSlipsThroughOppositeCornersOfASquareColumn() {
    var free =
        new Region(
            Region.rectangle(0, 0, 10, 10).outline(),
            List.of(Region.rectangle(4, 4, 6, 6).outline()));
    assertThat(length(List.of(free), new Vec2(3, 3), new Vec2(7, 7)))
        .isCloseTo(2 * Math.hypot(1, 3), within(1e-12));
    assertThat(length(List.of(free), new Vec2(4, 4), new Vec2(6, 6))).isEqualTo(4);
  }

  @Test
  void bendsAddTheArcLessItsChord() {
    var corner = new HosePath(List.of(new Vec2(0, 0), new Vec2(5, 0), new Vec2(5, 5)));
    // 0.9 m (π/2 − √2) = 0.1409 m for a quarter turn.
    assertThat(corner.bendAllowance(0.9)).isCloseTo(0.1409, within(1e-4));
  }

  @Test
  void noWayBetweenPiecesOfAFloor() {
    var free = List.of(Region.rectangle(0, 0, 4, 4), Region.rectangle(5, 0, 9, 4));
    var network = new FloorNetwork(free);
    var target = new Target(network, new Vec2(6, 1));
    assertThat(network.from(new Vec2(1, 1)).to(target)).isEmpty();
    assertThat(network.from(new Vec2(1, 1)).pathTo(target)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void lengthsEqualTheSlowAndSureWay(int batch) {
    for (long number = batch * 10L; number < batch * 10L + 10; number++) {
      RandomFloor floor = RandomFloor.of(number);
      var network = new FloorNetwork(floor.free().regions());
      var slow = new BruteForce(floor.free().regions());
      var random = new Random(number);
      for (Vec2 from : floor.points(random, 3)) {
        var ways = network.from(from);
        for (Vec2 to : floor.points(random, 3)) {
          var target = new Target(network, to);
          double fast = ways.to(target).orElse(Double.POSITIVE_INFINITY);
          double sure = slow.distance(from, to);
          String which = "floor " + number + " from " + from + " to " + to;
          if (Double.isInfinite(sure)) {
            assertThat(fast).as(which).isInfinite();
          } else {
            assertThat(fast).as(which).isCloseTo(sure, within(1e-9));
            assertThat(ways.pathTo(target).orElseThrow().length()).isCloseTo(sure, within(1e-9));
          }
        }
      }
    }
  }

  @Test
  void oneFootOfMoveNeverChangesALengthByMore() {
    int compared = 0;
    for (long number = 100; number < 130; number++) {
      RandomFloor floor = RandomFloor.of(number);
      var network = new FloorNetwork(floor.free().regions());
      var random = new Random(number);
      List<Vec2> points = floor.points(random, 12);
      Vec2 here = points.get(0);
      Vec2 there = here.plus(random.nextBoolean() ? new Vec2(FOOT, 0) : new Vec2(0, FOOT));
      if (!floor.free().contains(there)
          || network.from(here).to(new Target(network, there)).orElse(9) > FOOT + 1e-9) {
        continue;
      }
      for (Vec2 p : points) {
        var target = new Target(network, p);
        double a = network.from(here).to(target).orElse(-1);
        double b = network.from(there).to(target).orElse(-1);
        assertThat(Math.abs(a - b)).isLessThanOrEqualTo(FOOT + 1e-9);
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(100);
  }

  @Test
  void blockingNeverShortens() {
    int longer = 0;
    for (long number = 200; number < 230; number++) {
      RandomFloor before = RandomFloor.of(number);
      var random = new Random(number);
      List<Vec2> points = before.points(random, 8);
      double x = 10 * random.nextDouble();
      RandomFloor after = before.with(Region.rectangle(x, 4, x + 4, 5));
      var open = new FloorNetwork(before.free().regions());
      var blocked = new FloorNetwork(after.free().regions());
      for (Vec2 p : points) {
        for (Vec2 q : points) {
          if (after.free().contains(p) && after.free().contains(q)) {
            double was = open.from(p).to(new Target(open, q)).orElse(Double.POSITIVE_INFINITY);
            double is = blocked.from(p).to(new Target(blocked, q)).orElse(Double.POSITIVE_INFINITY);
            assertThat(is).isGreaterThanOrEqualTo(was - 1e-3);
            longer += is > was + 0.1 ? 1 : 0;
          }
        }
      }
    }
    assertThat(longer).isPositive();
  }

  private static double length(List<Region> free, Vec2 from, Vec2 to) {
    var network = new FloorNetwork(free);
    return network.from(from).to(new Target(network, to)).orElse(-1);
  }

  @Test
  void nearestFreePointOfAPointInAWall() {
    RandomFloor floor = RandomFloor.of(1);
    Vec2 inWall = floor.walls().get(0).outline().get(0);
    Vec2 free = floor.free().nearest(inWall, Length.ofMetres(50)).orElseThrow();
    assertThat(floor.free().contains(free)).isTrue();
  }
}
