package org.coatrun.routing.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.KeepOut;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SiteFacts;
import org.coatrun.shared.line.Wording;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.Test;

/** A kiosk of 8 m by 5 m: no room on its slab for 30 ft by 20 ft of machine and bags. */
class GroundBesideTest {

  private static final double FOOT = 0.3048;
  private static final double ROOM = 20 * FOOT;
  private static final double RING = 40 * FOOT;

  private static final LineRequest KIOSK = LineRequest.of(List.of(floor(8, 5)), steel());

  @Test
  void theMachineStandsOnGroundThatIsSaidToBeAssumed() {
    LinePlan plan = LinePlanner.plan(KIOSK);
    assertThat(plan.routes()).isNotEmpty().allMatch(r -> r instanceof Route);
    MachineSpot spot = plan.machines().get(0);
    assertThat(spot.needs()).contains(GroundBeside.NEED);
    assertThat(plan.floors().get(0).outline().onAssumedGround(spot.at())).isTrue();
    assertThat(assumed(plan))
        .hasValue(
            "Level 1: no slab there has room for machine and bags; level ground was assumed 40 ft"
                + " wide around it.");
    LinePlan metric = LinePlanner.plan(KIOSK.withWording(Wording.metric()));
    assertThat(assumed(metric).orElseThrow()).contains("assumed 12.2 m wide");
  }

  /** Half on a slab and half off it no machine stands level. */
  @Test
  void everySpotHasItsRoomBesideTheSlabAndOnTheRing() {
    var spots = new SpotFinder(LinePlanner.of(KIOSK).request()).find();
    assertThat(spots).hasSizeGreaterThan(5);
    for (MachineSpot s : spots) {
      double off = off(s.at());
      assertThat(off).isBetween(ROOM / 2 - 0.05, RING - ROOM / 2 + 0.05);
    }
  }

  @Test
  void aSlabWithRoomComesFirst() {
    LinePlan plan = LinePlanner.plan(LineRequest.of(List.of(floor(30, 20)), steel()));
    assertThat(plan.floors().get(0).outline().ground()).isEmpty();
    assertThat(assumed(plan)).isEmpty();
  }

  @Test
  void nothingIsAssumedWhereTheJobAllowsNone() {
    LinePlan plan = LinePlanner.plan(KIOSK.withSite(ground(0)));
    assertThat(assumed(plan)).isEmpty();
    assertThat(plan.machines()).isEmpty();
    assertThat(plan.findings())
        .anyMatch(f -> f.code() == LineFinding.NO_MACHINE_SPOT)
        .noneMatch(f -> f.code() == LineFinding.ASSUMED_GROUND);
  }

  /** A street to the south and neighbours west and north leave the east. */
  @Test
  void keepOutsHoldOnTheGround() {
    var keepOuts =
        List.of(
            new KeepOut("Level 1", "street", Region.rectangle(-50, -50, 50, -1)),
            new KeepOut("Level 1", "neighbour", Region.rectangle(-50, -50, -1, 50)),
            new KeepOut("Level 1", "neighbour", Region.rectangle(-50, 6, 50, 50)));
    LineRequest tight =
        KIOSK.withSite(
            new SiteFacts(
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Length.ofMetres(6),
                Length.ofMetres(6),
                Length.ofMetres(RING)));
    LinePlan plan = LinePlanner.plan(tight.withKeepOuts(keepOuts));
    assertThat(plan.machines()).hasSize(1);
    assertThat(plan.machines().get(0).at().x()).isGreaterThan(8);
    for (Vec2 p : hose(plan)) {
      assertThat(keepOuts).noneMatch(k -> k.region().contains(p));
    }
  }

  @Test
  void aSpotOfTheJobFileBesideTheSlabIsTaken() {
    var yard = new MachineSpot("yard", 0, new Vec2(4, -8), 0, List.of());
    LinePlan plan = LinePlanner.plan(KIOSK.withSpots(List.of(yard), 1));
    assertThat(plan.machines()).extracting(MachineSpot::name).containsExactly("yard");
    assertThat(plan.machines().get(0).at().distance(yard.at())).isCloseTo(0, within(1e-3));
    assertThat(plan.machines().get(0).needs()).contains(GroundBeside.NEED);
    assertThat(assumed(plan).orElseThrow()).contains("a machine spot of the job file");
    var across = new MachineSpot("across the road", 0, new Vec2(4, -40), 0, List.of());
    assertThat(LinePlanner.plan(KIOSK.withSpots(List.of(across), 1)).findings())
        .anyMatch(f -> f.code() == LineFinding.SPOT_NOT_FREE);
  }

  private static Optional<String> assumed(LinePlan plan) {
    return plan.findings().stream()
        .filter(f -> f.code() == LineFinding.ASSUMED_GROUND)
        .map(Finding::sentence)
        .findFirst();
  }

  /** How far a point is off the slab of the kiosk. */
  private static double off(Vec2 p) {
    double dx = Math.max(0, Math.max(-p.x(), p.x() - 8));
    double dy = Math.max(0, Math.max(-p.y(), p.y() - 5));
    return Math.max(dx, dy);
  }

  private static List<Vec2> hose(LinePlan plan) {
    var points = new ArrayList<Vec2>();
    for (var result : plan.routes()) {
      for (Leg leg : ((Route) result).legs()) {
        for (int i = 1; i < leg.path().size(); i++) {
          Vec2 a = leg.path().get(i - 1);
          Vec2 way = leg.path().get(i).minus(a);
          for (double t = 0; t <= 1; t += 0.02) {
            points.add(a.plus(way.times(t)));
          }
        }
      }
    }
    return points;
  }

  private static SiteFacts ground(double metres) {
    SiteFacts s = SiteFacts.unknown();
    return new SiteFacts(
        s.truckAccess(),
        s.power(),
        s.water(),
        s.roomLength(),
        s.roomWidth(),
        Length.ofMetres(metres));
  }

  private static FloorOutline floor(double x, double y) {
    return new FloorOutline(
        "Level 1",
        Length.ZERO,
        Length.ofMetres(4),
        List.of(Region.rectangle(0, 0, x, y)),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static List<WorkPiece> steel() {
    return List.of(
        new WorkPiece(
            "B1",
            "",
            new Vec3(0.5, 1, 3.5),
            new Vec3(7.5, 1, 3.5),
            Length.ofMetres(0.3),
            Volume.ofCubicMetres(0.2)));
  }
}
