package org.coatrun.geometry.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.SlabOpening;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Vec2;
import org.junit.jupiter.api.Test;

/** Floors of hand-built boxes, against areas worked out by hand. */
class FloorCutterTest {

  private static final double EXACT = 1e-6;

  @Test
  void aSlabLessItsOpeningIsThePlateAndTheOpeningLeadsDown() {
    Site site = new Site().storey("Ground", 0).storey("First", 4);
    site.slab(0, 0, 20, 10, 0);
    ElementId upper = site.slab(0, 0, 20, 10, 4);
    site.hole(upper, "shaft A", 8, 3, 10, 6, 4);
    site.column(1, 1, 0, 8);
    Floors floors = site.floors();
    assertThat(floors.floors()).extracting(FloorOutline::storey).containsExactly("Ground", "First");
    FloorOutline first = floors.floors().get(1);
    assertThat(area(first.plate())).isCloseTo(20 * 10 - 2 * 3, within(EXACT));
    assertThat(first.openings()).hasSize(1);
    SlabOpening shaft = first.openings().get(0);
    assertThat(shaft.name()).isEqualTo("shaft A");
    assertThat(shaft.kind()).isEqualTo(SlabOpening.Kind.SHAFT);
    assertThat(shaft.region().area()).isCloseTo(6, within(EXACT));
    assertThat(area(first.columns())).isCloseTo(0.09, within(EXACT));
    assertThat(floors.floors().get(0).height().metres()).isCloseTo(3.8, within(EXACT));
    assertThat(floors.findings()).isEmpty();
  }

  @Test
  void anOpeningThatAnotherSlabFillsIsNone() {
    Site site = new Site();
    ElementId outer = site.slab(0, 0, 20, 10, 0);
    site.hole(outer, "core", 5, 3, 11, 8, 0);
    ElementId inner = site.slab(5, 3, 11, 8, 0);
    site.hole(inner, "stair", 6, 4, 8, 7, 0);
    site.column(1, 1, 0, 4);
    FloorOutline floor = site.floors().floors().get(0);
    assertThat(area(floor.plate())).isCloseTo(200 - 6, within(EXACT));
    assertThat(floor.openings()).hasSize(1);
    assertThat(floor.openings().get(0).kind()).isEqualTo(SlabOpening.Kind.STAIR);
    assertThat(floor.openings().get(0).region().area()).isCloseTo(6, within(EXACT));
  }

  @Test
  void aFlightUnderAnUnnamedOpeningMakesItAStairwell() {
    Site site = new Site();
    site.slab(0, 0, 20, 10, 0);
    ElementId upper = site.slab(0, 0, 20, 10, 4);
    site.hole(upper, "", 8, 3, 10, 7, 4);
    site.hole(upper, "", 14, 3, 16, 7, 4);
    site.stair(8, 3, 0, 9, 7, 4);
    site.column(1, 1, 0, 8);
    assertThat(site.floors().floors().get(1).openings())
        .extracting(SlabOpening::kind)
        .containsExactly(SlabOpening.Kind.STAIR, SlabOpening.Kind.SHAFT);
  }

  @Test
  void aWallThatPassesTheSlabLeavesItsDoorToWalkThrough() {
    Site site = new Site();
    site.slab(0, 0, 20, 10, 0);
    site.slab(0, 0, 9.9, 10, 4);
    site.slab(10.1, 0, 20, 10, 4);
    site.wall(Substance.CONCRETE, 9.9, 0, 0, 10.1, 10, 4);
    ElementId upper = site.wall(Substance.CONCRETE, 9.9, 0, 4, 10.1, 10, 8);
    site.door(upper, 9.8, 4, 4, 10.2, 5, 6.1);
    site.column(1, 1, 0, 8);
    FloorOutline first = site.floors().floors().get(1);
    assertThat(first.plate()).hasSize(1);
    assertThat(area(first.plate())).isCloseTo(200, within(EXACT));
    assertThat(area(first.walls())).isCloseTo(0.2 * 9, within(EXACT));
    assertThat(first.walls()).noneMatch(w -> w.contains(new Vec2(10, 4.5)));
    assertThat(first.openings()).isEmpty();
  }

  @Test
  void slabsBelongTogetherByHeightWhateverTheirStorey() {
    Site site = new Site().storey("Ground", 0).storey("First", 4);
    site.slab(0, 0, 20, 10, 0);
    site.slab(0, 0, 12, 10, 4);
    site.slab(12, 0, 20, 10, 4.1);
    site.slab(0, 0, 5, 10, 5.8);
    site.column(1, 1, 0, 9);
    site.column(15, 1, 0, 9);
    Floors floors = site.floors();
    assertThat(floors.floors())
        .extracting(f -> f.elevation().metres())
        .containsExactly(0.0, 4.0, 5.8);
    assertThat(area(floors.floors().get(1).plate())).isCloseTo(200, within(EXACT));
    assertThat(area(floors.floors().get(2).plate())).isCloseTo(50, within(EXACT));
    assertThat(floors.floors()).extracting(FloorOutline::storey).doesNotHaveDuplicates();
  }

  @Test
  void bareDeckIsAFloorOnlyUnderSteelAndIsSaidToBeAssumed() {
    Site site = new Site();
    site.slab(0, 0, 20, 10, 0);
    site.bareDeck(0, 0, 20, 10, 4);
    site.column(1, 1, 0, 4);
    assertThat(site.floors().floors()).hasSize(1);
    site.column(1, 1, 4, 8);
    Floors taller = site.floors();
    assertThat(taller.floors()).hasSize(2);
    assertThat(taller.findings())
        .extracting(f -> f.code())
        .containsExactly(LineFinding.ASSUMED_FLOOR);
  }

  @Test
  void aBareFrameGetsGroundAndFloorsThatAreSaidToBeAssumed() {
    Site site = new Site().storey("Level 1", 0).storey("Level 2", 4).storey("Roof", 8);
    for (int x = 0; x <= 12; x += 6) {
      for (int y = 0; y <= 12; y += 6) {
        site.column(x, y, 0, 8);
      }
      for (double z : new double[] {4, 8}) {
        site.beam(x, 0, x, 12, z);
        site.beam(0, x, 12, x, z);
      }
    }
    Floors floors = site.floors();
    assertThat(floors.floors())
        .extracting(FloorOutline::storey)
        .containsExactly("Level 1", "Level 2");
    assertThat(floors.findings())
        .extracting(f -> f.code())
        .containsExactly(LineFinding.ASSUMED_FLOOR, LineFinding.ASSUMED_FLOOR);
    // the beams' outline, 0.1 m beyond their lines on each side
    assertThat(area(floors.floors().get(1).plate())).isCloseTo(12.2 * 12.2, within(0.5));
    assertThat(floors.floors().get(1).columns()).hasSize(9);
    assertThat(floors.floors().get(0).columns()).hasSize(9);
  }

  @Test
  void anLShapedFrameKeepsItsReEntrantCorner() {
    Site site = new Site().storey("Level 1", 0).storey("Level 2", 4).storey("Roof", 8);
    double[][] corners = {
      {0, 0, 48, 0},
      {48, 0, 48, 16},
      {48, 16, 16, 16},
      {16, 16, 16, 48},
      {16, 48, 0, 48},
      {0, 48, 0, 0}
    };
    for (double[] c : corners) {
      site.column(c[0], c[1], 0, 8);
      site.beam(
          Math.min(c[0], c[2]),
          Math.min(c[1], c[3]),
          Math.max(c[0], c[2]),
          Math.max(c[1], c[3]),
          4);
    }
    for (int i = 8; i < 48; i += 8) {
      site.beam(i, 0, i, i < 16 ? 48 : 16, 4);
      site.beam(0, i, i < 16 ? 48 : 16, i, 4);
    }
    FloorOutline first = site.floors().floors().get(1);
    double l = 48 * 16 + 32 * 16;
    assertThat(area(first.plate())).isBetween(l, 1.1 * l);
    assertThat(first.plate()).noneMatch(r -> r.contains(new Vec2(40, 40)));
  }

  @Test
  void wallsOfUnknownMaterialStandByTheirThickness() {
    Site site = new Site();
    site.slab(0, 0, 20, 10, 0);
    site.wall(Substance.UNKNOWN, 5, 0, 0, 5.2, 10, 4);
    site.wall(Substance.UNKNOWN, 8, 0, 0, 8.1, 10, 4);
    site.wall(Substance.OTHER, 11, 0, 0, 11.3, 10, 4);
    site.column(1, 1, 0, 4);
    Floors floors = site.floors();
    assertThat(area(floors.floors().get(0).walls())).isCloseTo(2, within(EXACT));
    assertThat(floors.findings())
        .extracting(f -> f.code())
        .containsExactly(LineFinding.WALLS_BY_THICKNESS);
  }

  @Test
  void aSlabThatCannotBeCutIsNamed() {
    Site site = new Site();
    site.slab(0, 0, 20, 10, 0);
    site.unreadSlab("Ramp");
    site.column(1, 1, 0, 4);
    assertThat(site.floors().findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.code()).isEqualTo(LineFinding.FLOOR_PART_UNREAD);
              assertThat(f.sentence()).contains("Ramp");
            });
  }

  @Test
  void aKerbIsSteppedOverAndASleeveIsNoOpening() {
    Site site = new Site();
    ElementId slab = site.slab(0, 0, 20, 10, 0);
    site.hole(slab, "sleeve", 3, 3, 3.1, 3.1, 0);
    site.wall(Substance.CONCRETE, 5, 0, 0, 5.2, 10, 0.3);
    site.column(1, 1, 0, 4);
    FloorOutline floor = site.floors().floors().get(0);
    assertThat(floor.walls()).isEmpty();
    assertThat(floor.openings()).isEmpty();
    assertThat(area(floor.plate())).isCloseTo(200, within(EXACT));
  }

  @Test
  void roomsBringTheirAir() {
    Site site = new Site();
    site.slab(0, 0, 20, 10, 0);
    site.room("hall", 1, 1, 0, 11, 9, 3);
    site.column(1, 1, 0, 4);
    FloorOutline floor = site.floors().floors().get(0);
    assertThat(floor.spaces()).hasSize(1);
    assertThat(floor.spaces().get(0).volume().cubicMetres()).isCloseTo(240, within(EXACT));
  }

  @Test
  void floorsThatLookAlikeAreEqualInOutline() {
    Site site = new Site();
    for (double z : new double[] {0, 3.7, 7.4}) {
      ElementId slab = site.slab(0, 0, 21.3, 10.7, z);
      site.hole(slab, "shaft", 8, 3, 10, 6, z);
    }
    site.column(1.1, 1.3, -1, 12);
    List<FloorOutline> floors = site.floors().floors();
    assertThat(floors).hasSize(3);
    assertThat(floors.get(2).sameOutline(floors.get(1))).isTrue();
  }

  private static double area(List<Region> regions) {
    return regions.stream().mapToDouble(Region::area).sum();
  }
}
