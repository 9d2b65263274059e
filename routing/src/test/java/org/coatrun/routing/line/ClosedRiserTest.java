package org.coatrun.routing.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coatrun.shared.line.KeepOut;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.shape.Vec2;
import org.junit.jupiter.api.Test;

/** What closes a shaft or a way over a floor never makes a plan cheaper. */
class ClosedRiserTest {

  private static final double SIDE = 32;

  @Test
  void closingAShaftNeverSavesAnything() {
    int dearer = 0;
    for (long number = 0; number < 8; number++) {
      var random = new Random(number);
      List<Riser> risers = risers(random);
      LinePlan open = plan(risers, List.of());
      Riser used = open.risers().get(0).riser();
      LinePlan closed = plan(risers.stream().filter(r -> !r.equals(used)).toList(), List.of());
      dearer += costs(open, closed);
    }
    assertThat(dearer).isPositive();
  }

  @Test
  void closingAWayOverAFloorNeverSavesAnything() {
    for (long number = 0; number < 8; number++) {
      var random = new Random(100 + number);
      List<Riser> risers = risers(random);
      double x = 8 + 8 * random.nextDouble();
      double y = 4 + 4 * random.nextDouble();
      // Clear of the places of work themselves, which would move aside.
      var across = new KeepOut("Level 2", "stored steel", Region.rectangle(x, y, x + 0.3, y + 2));
      costs(plan(risers, List.of()), plan(risers, List.of(across)));
    }
  }

  /** 1 where the second plan is dearer or leaves more out; fails where it is better. */
  private static int costs(LinePlan before, LinePlan after) {
    assertThat(before.proof().optimal()).isTrue();
    assertThat(after.proof().optimal()).isTrue();
    long left = left(before);
    long leftAfter = left(after);
    assertThat(leftAfter).isGreaterThanOrEqualTo(left);
    if (leftAfter == left) {
      double same = 1e-6 * before.proof().cost();
      assertThat(after.proof().cost()).isGreaterThanOrEqualTo(before.proof().cost() - same);
    }
    return leftAfter > left || after.proof().cost() > before.proof().cost() + 1 ? 1 : 0;
  }

  private static long left(LinePlan plan) {
    return plan.routes().stream().filter(NoRoute.class::isInstance).count();
  }

  private static List<Riser> risers(Random random) {
    var risers = new ArrayList<Riser>();
    for (int i = 0; i < 3; i++) {
      Vec2 at = new Vec2(SIDE * random.nextDouble(), SIDE * random.nextDouble());
      risers.add(new Riser("riser " + i, Riser.Kind.CHASE, at, 0, 2));
    }
    return risers;
  }

  private static LinePlan plan(List<Riser> risers, List<KeepOut> keepOuts) {
    Towers tower = Towers.of(3, 4, SIDE, 9);
    LineRequest r =
        LineRequest.of(tower.floors(), tower.work())
            .withSpots(List.of(new MachineSpot("dock", 0, new Vec2(3, 16), 0, List.of())), 1);
    return LinePlanner.plan(
        new LineRequest(
            r.floors(),
            keepOuts,
            risers,
            false,
            r.work(),
            r.spots(),
            r.machineFloor(),
            r.site(),
            r.limits(),
            r.reach(),
            r.costs(),
            r.stock(),
            r.utilities(),
            1,
            3000,
            r.wording()));
  }
}
