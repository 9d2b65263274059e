package org.coatrun.routing.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.Test;

class HoseReachTest {

  private static final Vec2 MACHINE = new Vec2(10, 10);

  /**
   * In the open the edge is a circle: 60 m of hose less a whip of 7.62 m, through 1.05 of slack.
   */
  @Test
  void inTheOpenItEndsOnACircle() {
    double radius = (60 - 25 * 0.3048) / 1.05;
    List<List<Vec2>> edge = edge(List.of(), 60);
    assertThat(edge).hasSize(1);
    assertThat(edge.get(0)).hasSizeGreaterThan(20);
    assertThat(edge.get(0))
        .allSatisfy(p -> assertThat(p.distance(MACHINE)).isCloseTo(radius, within(0.02)));
  }

  /** Behind a wall the hose has to go around its end. */
  @Test
  void behindAWallItEndsSooner() {
    var wall = Region.rectangle(20, 0, 20.3, 30);
    double straight = (60 - 25 * 0.3048) / 1.05;
    List<Vec2> behind =
        edge(List.of(wall), 60).stream()
            .flatMap(List::stream)
            .filter(p -> p.x() > 21.2 && p.y() < 15)
            .toList();
    assertThat(behind).isNotEmpty();
    Vec2 end = new Vec2(20.15, 30);
    assertThat(behind)
        .allSatisfy(
            p -> {
              assertThat(p.distance(MACHINE)).isLessThan(straight - 5);
              double around = MACHINE.distance(end) + end.distance(p);
              assertThat(around).isCloseTo(straight, within(1.0));
            });
  }

  @Test
  void thereIsNoEdgeWhereAllIsReached() {
    assertThat(edge(List.of(), 200)).isEmpty();
  }

  private static List<List<Vec2>> edge(List<Region> walls, double hose) {
    var floor =
        new FloorOutline(
            "Ground",
            Length.ZERO,
            Length.ofMetres(5),
            List.of(Region.rectangle(0, 0, 90, 60)),
            walls,
            List.of(),
            List.of(),
            List.of());
    var piece =
        new WorkPiece(
            "C1",
            "",
            new Vec3(12, 12, 0),
            new Vec3(12, 12, 3),
            Length.ofMetres(0.3),
            Volume.ofCubicMetres(0.2));
    LineRequest request =
        LineRequest.of(List.of(floor), List.of(piece))
            .withSpots(List.of(new MachineSpot("here", 0, MACHINE, 0, List.of())), 1)
            .withLimits(LineLimits.commonPractice().withFlexible(Length.ofMetres(hose)));
    LinePlan plan = LinePlanner.plan(request);
    return new HoseReach(request, plan).edge(0);
  }
}
