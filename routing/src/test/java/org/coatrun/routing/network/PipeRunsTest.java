package org.coatrun.routing.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.coatrun.routing.floor.FreeArea;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.junit.jupiter.api.Test;

class PipeRunsTest {

  private static final double MARGIN = 0.15;
  private static final double BEND = 1.5;

  @Test
  void pipeFollowsTheWallsOfABareRoom() {
    var plate = List.of(Region.rectangle(0, 0, 20, 10));
    var free = FreeArea.of(plate, List.of(), RandomFloor.MARGIN);
    var pipes = new PipeNetwork(free.regions(), List.of(), MARGIN, 9);
    var floor = new FloorNetwork(free.regions());
    double in = MARGIN + 0.001;
    Vec2 corner = new Vec2(in, in);
    Vec2 opposite = new Vec2(20 - in, 10 - in);
    var runs = new PipeRuns(pipes, floor, corner, 1.5);
    assertThat(runs.lengthTo(opposite).orElseThrow()).isCloseTo(20 + 10 - 4 * in, within(1e-6));
    assertThat(runs.runTo(opposite).orElseThrow().points()).hasSize(3);
  }

  @Test
  void pipeRunsBesideTheRowsOfColumns() {
    var columns = new ArrayList<Region>();
    for (int i = 1; i < 5; i++) {
      for (int j = 1; j < 4; j++) {
        columns.add(Region.rectangle(9 * i - 0.2, 9 * j - 0.2, 9 * i + 0.2, 9 * j + 0.2));
      }
    }
    var free = FreeArea.of(List.of(Region.rectangle(0, 0, 45, 36)), columns, RandomFloor.MARGIN);
    var pipes = new PipeNetwork(free.regions(), columns, MARGIN, 9);
    var floor = new FloorNetwork(free.regions());
    Vec2 start = new Vec2(1, 18.5);
    var runs = new PipeRuns(pipes, floor, start, 1.5);
    List<Vec2> outlets = pipes.outlets(6);
    assertThat(outlets).hasSizeBetween(15, 60);
    for (Vec2 outlet : outlets) {
      HosePath run = runs.runTo(outlet).orElseThrow();
      assertThat(run.length()).isCloseTo(runs.lengthTo(outlet).orElseThrow(), within(1e-6));
      // Pipe is square to the walls, the first piece apart: never shorter than straight, seldom
      // much longer than both sides of the rectangle.
      double sides = Math.abs(outlet.x() - start.x()) + Math.abs(outlet.y() - start.y());
      assertThat(run.length()).isBetween(outlet.distance(start) - 1e-6, sides + 10);
      assertThat(run.turns().size()).isLessThanOrEqualTo(4);
    }
  }

  /** Every run keeps its length in the tree, and what runs share is in it once. */
  @Test
  void theTreeHasEveryRunAndSharedPipeOnce() {
    List<Region> free =
        FreeArea.of(List.of(Region.rectangle(0, 0, 45, 36)), List.of(), RandomFloor.MARGIN)
            .regions();
    var pipes = new PipeNetwork(free, List.of(), MARGIN, 9);
    var runs = new PipeRuns(pipes, new FloorNetwork(free), new Vec2(1, 18.5), 1.5);
    List<Vec2> outlets = pipes.outlets(6);
    PipeTree tree = runs.treeTo(outlets);
    double apart = 0;
    for (int o = 0; o < outlets.size(); o++) {
      double length = 0;
      for (int n = tree.last()[o]; n >= 0; n = tree.before()[n]) {
        length += tree.length()[n];
      }
      assertThat(length).isCloseTo(runs.lengthTo(outlets.get(o)).orElseThrow(), within(1e-9));
      apart += length;
    }
    double together = Arrays.stream(tree.length()).sum();
    // Pipe lies along the walls, both ways round, and a stub leads to it.
    assertThat(together).isBetween(100.0, 2 * (45 + 36) + 40.0).isLessThan(apart / 3);
    assertThat(tree.length().length).isLessThanOrEqualTo(2 * outlets.size());
  }

  /** Length and bends weighed, against every way through the network. */
  @Test
  void everyRunIsTheBestOfAllWays() {
    int ways = 0;
    for (long number = 0; number < 24; number++) {
      SmallRoom room = SmallRoom.of(number);
      List<Region> free = room.free().regions();
      var pipes = new PipeNetwork(free, List.of(), MARGIN, 9);
      Vec2 start = room.point(new Random(number));
      var runs = new PipeRuns(pipes, new FloorNetwork(free), start, BEND);
      for (Vec2 node : pipes.nodes()) {
        AllPipePaths.Best best = AllPipePaths.best(pipes, free, start, node, BEND);
        String which = "room " + number + " to " + node;
        double cost = runs.runTo(node).map(PipeRunsTest::weighed).orElse(1e9);
        assertThat(cost).as(which).isCloseTo(Math.min(best.cost(), 1e9), within(1e-6));
        ways += best.paths();
      }
    }
    assertThat(ways).isGreaterThan(500);
  }

  private static double weighed(HosePath run) {
    return run.length() + BEND * run.turns().stream().filter(t -> t > Math.toRadians(5)).count();
  }
}
