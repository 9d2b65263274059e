package org.coatrun.routing.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.line.Access;
import org.coatrun.shared.line.FloorCheck;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.Hardware;
import org.coatrun.shared.line.LineCosts;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.ReachLimits;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SiteFacts;
import org.coatrun.shared.line.Utilities;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Pressure;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.Test;

/** Limits of the trade in whole plans; all of them common practice. */
class TradeLimitsTest {

  private static final double FOOT = 0.3048;

  /** 225 ft of hose and a whip of 25 ft make 250 ft; a tenth of a millimetre more is too much. */
  @Test
  void twoHundredFiftyFeetOfHoseWillDoAndAHairMoreWillNot() {
    Vec2 machine = new Vec2(1, 2);
    LinePlan at = LinePlanner.plan(corridor(machine, 1 + 225 * FOOT));
    Route route = (Route) at.routes().get(0);
    assertThat(route.flexible().feet()).isCloseTo(250, within(1e-9));
    assertThat(route.pipe().metres()).isZero();
    assertThat(check(at).standpipe()).isEmpty();

    LinePlan over = LinePlanner.plan(corridor(machine, 1 + 225 * FOOT + 1e-4));
    Route longer = (Route) over.routes().get(0);
    assertThat(longer.flexible().feet()).isLessThan(250);
    assertThat(longer.pipe().metres()).isPositive();
    assertThat(check(over).standpipe()).hasSize(1).first().asString().contains("by hose alone");
  }

  /** A pole gun of 12 ft, held at 4 ft, reaches steel at 16 ft: four sections of 3 ft. */
  @Test
  void aPoleGunOfTwelveFeetReachesSixteenAndNotAHairMore() {
    ReachLimits reach = ReachLimits.commonPractice();
    assertThat(reach.poleGun().feet()).isCloseTo(12, within(1e-9));
    assertThat(reach.accessTo(Length.ofFeet(16))).isEqualTo(Access.POLE_GUN);
    assertThat(reach.accessTo(Length.ofFeet(16.001))).isEqualTo(Access.LIFT);
    LinePlan plan = LinePlanner.plan(steelAt(16));
    assertThat(plan.cells()).isNotEmpty().allMatch(c -> c.access() == Access.POLE_GUN);
    assertThat(plan.hardware())
        .contains(new Hardware(Hardware.Item.POLE_GUN_SECTION, Length.ofFeet(3), 4))
        .contains(new Hardware(Hardware.Item.POLE_GUN_TIP, Length.ofInches(18), 1));
    assertThat(LinePlanner.plan(steelAt(16.01)).cells()).allMatch(c -> c.access() == Access.LIFT);
  }

  @Test
  void everyLineEndsInAWhipOfTwentyFiveFeet() {
    assertThat(LineLimits.commonPractice().whip().feet()).isCloseTo(25, within(1e-9));
    LinePlan plan = LinePlanner.plan(steelAt(12));
    assertThat(plan.hardware())
        .contains(new Hardware(Hardware.Item.WHIP_HOSE, Length.ofFeet(25), 1));
  }

  @Test
  void aNamedRiserWithoutFreeFloorIsLeftOutWithAFinding() {
    Towers tower = Towers.of(3, 4, 40, 9);
    LineRequest request =
        LineRequest.of(tower.floors(), tower.work())
            .withSpots(List.of(new MachineSpot("dock", 0, new Vec2(5, 20), 0, List.of())), 1);
    var off = new Riser("hoist", Riser.Kind.CHASE, new Vec2(-30, 20), 0, 2);
    var on = new Riser("east", Riser.Kind.CHASE, new Vec2(39, 5), 0, 2);
    LinePlan plan = LinePlanner.plan(request.withRisers(List.of(off, on), false));
    assertThat(plan.candidates()).containsExactly(on);
    assertThat(plan.findings())
        .filteredOn(f -> f.code() == LineFinding.SPOT_NOT_FREE)
        .singleElement()
        .satisfies(f -> assertThat(f.toString()).contains("hoist").contains("10 ft"));
    assertThat(plan.routes()).allMatch(Route.class::isInstance);
  }

  /** It begins a storey over the machine. */
  @Test
  void aNamedRiserThatNoMachineReachesIsLeftOutWithAFinding() {
    Towers tower = Towers.of(3, 4, 40, 9);
    LineRequest request =
        LineRequest.of(tower.floors(), tower.work())
            .withSpots(List.of(new MachineSpot("dock", 0, new Vec2(5, 20), 0, List.of())), 1);
    var above = new Riser("hoist", Riser.Kind.CHASE, new Vec2(39, 30), 1, 2);
    var on = new Riser("east", Riser.Kind.CHASE, new Vec2(39, 5), 0, 2);
    LinePlan plan = LinePlanner.plan(request.withRisers(List.of(above, on), false));
    assertThat(plan.findings())
        .filteredOn(f -> f.code() == LineFinding.SPOT_NOT_FREE)
        .singleElement()
        .satisfies(f -> assertThat(f.toString()).contains("hoist", "own storey"));
    assertThat(plan.routes()).allMatch(Route.class::isInstance);
  }

  @Test
  void bagsWithoutRoomBesideTheMachineAreNamed() {
    LinePlan tight = LinePlanner.plan(corridor(new Vec2(1, 2), 20));
    assertThat(check(tight).notes()).anyMatch(n -> n.contains("no room for the bags"));
    assertThat(tight.machines().get(0).needs()).anyMatch(n -> n.contains("30 by 20 ft"));
    LinePlan ample = LinePlanner.plan(steelAt(12));
    assertThat(check(ample).notes()).noneMatch(n -> n.contains("no room for the bags"));
  }

  @Test
  void theWayFromTrucksAndPowerIsToldAndCosted() {
    LineRequest request = steelAt(12);
    SiteFacts unknown = SiteFacts.unknown();
    var site =
        new SiteFacts(
            List.of(new Vec2(15, -5), new Vec2(90, 0)),
            Optional.of(new Vec2(45, 15)),
            Optional.empty(),
            unknown.roomLength(),
            unknown.roomWidth(),
            unknown.ground());
    LinePlan plan = LinePlanner.plan(request.withSite(site));
    // From (15, −5) to the machine at (15, 15): 20 m.
    assertThat(check(plan).notes()).contains("bags are carried 66 ft from the trucks");
    // And to the power at (45, 15): 30 m.
    MachineSpot machine = plan.machines().get(0);
    LineCosts costs = request.costs();
    assertThat(machine.needs()).contains("trucks 66 ft away", "power 98 ft away");
    assertThat(machine.extraCost())
        .isCloseTo(20 * costs.haulPerMetre() + 30 * costs.feederPerMetre(), within(1e-9));
  }

  /** A booster pump with a tank of 55 gal: eleven minutes at 5 gal/min. */
  @Test
  void aSupplyThatFallsShortAsksForABoosterWithATank() {
    assertThat(check(LinePlanner.plan(supplied(70))).notes())
        .contains("booster pump with a tank of 55 gal (common practice), 11 min of water");
    assertThat(check(LinePlanner.plan(supplied(150))).notes()).isEmpty();
  }

  private static LineRequest supplied(double psi) {
    LineRequest r = steelAt(12);
    Utilities cp = r.utilities();
    var known =
        new Utilities(
            cp.nozzle(),
            cp.waterFlow(),
            cp.waterHose(),
            cp.roughness(),
            Optional.of(Pressure.ofPsi(psi)),
            cp.feeder(),
            cp.amperes(),
            cp.volts(),
            cp.feederRun(),
            cp.feederPercent(),
            cp.airChanges());
    return new LineRequest(
        r.floors(),
        r.keepOuts(),
        r.risers(),
        r.findRisers(),
        r.work(),
        r.spots(),
        r.machineFloor(),
        r.site(),
        r.limits(),
        r.reach(),
        r.costs(),
        r.stock(),
        known,
        r.mostMachines(),
        r.searchNodes(),
        r.wording());
  }

  private static FloorCheck check(LinePlan plan) {
    return plan.floors().get(0).check().orElseThrow();
  }

  /** A corridor 4 m wide with one piece of steel along it; hose laid without slack. */
  private static LineRequest corridor(Vec2 machine, double steel) {
    return request(Region.rectangle(0, 0, 90, 4), machine, new Vec2(steel, machine.y()), 10)
        .withLimits(LineLimits.commonPractice().withSlack(0));
  }

  /** A room of 30 by 30 m with steel in its middle, its top so high. */
  private static LineRequest steelAt(double feet) {
    return request(Region.rectangle(0, 0, 30, 30), new Vec2(15, 15), new Vec2(20, 15), feet);
  }

  private static LineRequest request(Region plate, Vec2 machine, Vec2 steel, double feet) {
    var floor =
        new FloorOutline(
            "Ground",
            Length.ZERO,
            Length.ofMetres(9),
            List.of(plate),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    var piece =
        new WorkPiece(
            "C1",
            "",
            new Vec3(steel.x(), steel.y(), 0),
            new Vec3(steel.x(), steel.y(), feet * FOOT),
            Length.ofMetres(0.3),
            Volume.ofCubicMetres(0.2));
    return LineRequest.of(List.of(floor), List.of(piece))
        .withSpots(List.of(new MachineSpot("here", 0, machine, 0, List.of())), 1);
  }
}
