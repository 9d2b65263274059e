package org.coatrun.routing.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.line.Access;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.ReachLimits;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.line.SlabOpening;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.Test;

class FloorTest {

  private static final Length MARGIN = Length.ofMetres(0.15);

  @Test
  void theFreeAreaKeepsItsMargin() {
    var free =
        FreeArea.of(
            List.of(Region.rectangle(0, 0, 10, 10)), List.of(Region.rectangle(4, 4, 6, 6)), MARGIN);
    // (10 − 2 × 0.151)² − (2 + 2 × 0.151)²: the last millimetre closes gaps of no width.
    assertThat(free.squareMetres())
        .isCloseTo(Math.pow(10 - 0.302, 2) - Math.pow(2.302, 2), within(1e-3));
    assertThat(free.contains(new Vec2(3.8, 5))).isTrue();
    assertThat(free.contains(new Vec2(3.9, 5))).isFalse();
  }

  @Test
  void aGapOfTwiceTheMarginIsClosed() {
    var walls = List.of(Region.rectangle(0, 4, 4.85, 5), Region.rectangle(5.15, 4, 10, 5));
    var free = FreeArea.of(List.of(Region.rectangle(0, 0, 10, 10)), walls, MARGIN);
    assertThat(free.regions()).hasSize(2);
  }

  @Test
  void aFloorWithoutAPlateHasNoFreeArea() {
    var free = FreeArea.of(List.of(), List.of(), MARGIN);
    assertThat(free.regions()).isEmpty();
    assertThat(free.nearest(new Vec2(0, 0), Length.ofMetres(5))).isEmpty();
  }

  @Test
  void openingsAboveEachOtherMakeARiser() {
    List<FloorOutline> floors = tower(5, SlabOpening.Kind.SHAFT);
    List<Riser> risers = RiserFinder.throughOpenings(floors);
    assertThat(risers).hasSize(1);
    assertThat(risers.get(0).lowest()).isZero();
    assertThat(risers.get(0).highest()).isEqualTo(4);
    assertThat(risers.get(0).kind()).isEqualTo(Riser.Kind.SLAB_OPENING);
    assertThat(Region.rectangle(4, 4, 6, 6).contains(risers.get(0).at())).isTrue();
  }

  @Test
  void aSlabWithoutTheOpeningEndsTheRiser() {
    var floors = new ArrayList<>(tower(5, SlabOpening.Kind.STAIR));
    floors.set(3, floor(3, List.of()));
    List<Riser> risers = RiserFinder.throughOpenings(floors);
    assertThat(risers).extracting(Riser::lowest).containsExactly(0, 3);
    assertThat(risers).extracting(Riser::highest).containsExactly(2, 4);
    assertThat(risers).allMatch(r -> r.kind() == Riser.Kind.STAIR);
  }

  @Test
  void edgesOnTheSideOfTheTrucksCarryRisers() {
    List<FloorOutline> floors = tower(4, SlabOpening.Kind.SHAFT);
    List<Riser> risers = RiserFinder.alongEdges(floors, List.of(new Vec2(10, -8)), 10, 2);
    assertThat(risers).hasSize(2).allMatch(r -> r.at().y() == 0 && r.highest() == 3);
    assertThat(risers.get(0).name()).startsWith("R2");
  }

  @Test
  void steelBelongsToTheHighestFloorUnderItsUnderside() {
    WorkPlan plan =
        gatherer(tower(4, SlabOpening.Kind.SHAFT))
            .gather(
                List.of(
                    piece("over floor 2", new Vec3(12, 2, 11.7), new Vec3(18, 2, 11.7)),
                    piece("in the opening", new Vec3(5, 5, 11.7), new Vec3(5, 5, 11.7))));
    // The opening is 2 m wide, its middle 1.15 m from free floor: sprayed from beside it.
    assertThat(plan.cells()).allMatch(c -> c.floor() == 2);
    assertThat(plan.groundless()).isEmpty();
  }

  @Test
  void steelOverAnAtriumIsSprayedFromItsGround() {
    var floors = new ArrayList<FloorOutline>();
    for (int f = 0; f < 3; f++) {
      var atrium = new SlabOpening("", SlabOpening.Kind.SHAFT, Region.rectangle(4, 4, 16, 16));
      floors.add(floor(f, f == 0 ? List.of() : List.of(atrium)));
    }
    WorkPlan plan =
        gatherer(floors)
            .gather(List.of(piece("over the atrium", new Vec3(10, 10, 11), new Vec3(10, 10, 11))));
    assertThat(plan.cells()).hasSize(1);
    assertThat(plan.cells().get(0).floor()).isZero();
    assertThat(plan.cells().get(0).access()).isEqualTo(Access.LIFT);
  }

  @Test
  void aColumnIsSprayedStoreyByStorey() {
    WorkPlan plan =
        gatherer(tower(4, SlabOpening.Kind.SHAFT))
            .gather(List.of(piece("column", new Vec3(15, 5, 0), new Vec3(15, 5, 12))));
    assertThat(plan.cells()).extracting(WorkCell::floor).containsExactly(0, 1, 2);
    assertThat(plan.cells())
        .allSatisfy(c -> assertThat(c.coating().cubicMetres()).isCloseTo(1 / 3.0, within(1e-9)))
        .allSatisfy(c -> assertThat(c.highest().metres()).isCloseTo(4, within(1e-9)));
  }

  @Test
  void steelWithNoFloorUnderItIsNamed() {
    WorkPlan plan =
        gatherer(tower(2, SlabOpening.Kind.SHAFT))
            .gather(List.of(piece("canopy", new Vec3(40, 5, 3), new Vec3(44, 5, 3))));
    assertThat(plan.cells()).isEmpty();
    assertThat(plan.groundless()).extracting(WorkPiece::mark).containsExactly("canopy");
    assertThat(plan.groundless().get(0).coating().cubicMetres()).isCloseTo(1, within(1e-9));
  }

  @Test
  void noWorkIsLostOrDoubled() {
    var work = new ArrayList<WorkPiece>();
    for (int i = 0; i < 40; i++) {
      double x = -5 + i * 0.77;
      work.add(piece("m" + i, new Vec3(x, 3, 1 + i * 0.2), new Vec3(x + 3, 17, 2 + i * 0.25)));
    }
    WorkPlan plan = gatherer(tower(3, SlabOpening.Kind.SHAFT)).gather(work);
    double cells = plan.cells().stream().mapToDouble(c -> c.coating().cubicMetres()).sum();
    double rest = plan.groundless().stream().mapToDouble(p -> p.coating().cubicMetres()).sum();
    assertThat(cells + rest).isCloseTo(40, within(1e-9));
    assertThat(rest).isPositive();
  }

  @Test
  void noiseAtTheEdgeOfAPlateMakesNoPlaceOfItsOwn() {
    var cells = new ArrayList<Integer>();
    for (double noise : new double[] {-1e-12, 0, 1e-12}) {
      // On the plate's edge, and on the line between its second and third squares of 5 m.
      WorkPlan plan =
          gatherer(tower(1, SlabOpening.Kind.SHAFT))
              .gather(
                  List.of(
                      piece("edge", new Vec3(noise, 0, 3), new Vec3(noise, 20, 3)),
                      piece("inside", new Vec3(10 + noise, 0, 3), new Vec3(10 + noise, 20, 3))));
      cells.add(plan.cells().size());
    }
    assertThat(cells).containsExactly(8, 8, 8);
  }

  @Test
  void noPlaceOfWorkIsWiderThanTheWhipReaches() {
    var work = new ArrayList<WorkPiece>();
    for (double x = 0; x <= 20; x += 0.25) {
      work.add(piece("m" + x, new Vec3(x, 0, 3), new Vec3(x, 20, 3)));
    }
    WorkPlan plan = gatherer(tower(1, SlabOpening.Kind.SHAFT)).gather(work);
    // Four by four squares of 5 m; three of 20 ft would not reach over 20 m.
    assertThat(plan.cells()).hasSize(16);
  }

  /** Common practice: pole guns of 12 ft at most. */
  @Test
  void poleGunsReachTwelveFeetMoreThanTheyAreHeld() {
    ReachLimits reach = ReachLimits.commonPractice();
    assertThat(reach.accessTo(Length.ofFeet(9))).isEqualTo(Access.NOZZLE);
    assertThat(reach.accessTo(Length.ofFeet(16))).isEqualTo(Access.POLE_GUN);
    assertThat(reach.poleGunFor(Length.ofFeet(16)).feet()).isCloseTo(12, within(1e-9));
    assertThat(reach.accessTo(Length.ofFeet(16.001))).isEqualTo(Access.LIFT);
    assertThat(reach.accessTo(Length.ofFeet(40.001))).isEqualTo(Access.SCAFFOLD);
  }

  private static WorkGatherer gatherer(List<FloorOutline> floors) {
    return new WorkGatherer(
        floors,
        floors.stream().map(f -> FreeArea.of(f, List.of(), MARGIN)).toList(),
        ReachLimits.commonPractice(),
        Length.ofFeet(20),
        Length.ofFeet(6));
  }

  private static WorkPiece piece(String mark, Vec3 from, Vec3 to) {
    return new WorkPiece(mark, "", from, to, Length.ofMetres(0.4), Volume.ofCubicMetres(1));
  }

  private static List<FloorOutline> tower(int storeys, SlabOpening.Kind kind) {
    var floors = new ArrayList<FloorOutline>();
    for (int f = 0; f < storeys; f++) {
      var hole = new SlabOpening("", kind, Region.rectangle(4, 4, 6, 6));
      floors.add(floor(f, f == 0 ? List.of() : List.of(hole)));
    }
    return floors;
  }

  private static FloorOutline floor(int f, List<SlabOpening> openings) {
    return new FloorOutline(
        "Level " + f,
        Length.ofMetres(4.0 * f),
        Length.ofMetres(3.7),
        List.of(Region.rectangle(0, 0, 20, 20)),
        List.of(),
        List.of(),
        openings,
        List.of());
  }
}
