package org.coatrun.routing.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;

class GroundRingTest {

  private static final Length WIDTH = Length.ofMetres(10);

  /** The ring is so wide all round, its corners square, and laps under the slab by 2 cm. */
  @Test
  void theRingIsAsWideAsAskedForAllRound() {
    List<Region> ring = GroundRing.around(floor(Region.rectangle(0, 0, 20, 10)), WIDTH);
    double around = 40 * 30 - 20 * 10;
    double lap = 20 * 10 - 19.96 * 9.96;
    assertThat(ring.stream().mapToDouble(Region::area).sum()).isCloseTo(around + lap, within(1e-6));
    assertThat(covered(ring, new Vec2(-9.9, 5))).isTrue();
    assertThat(covered(ring, new Vec2(-10.1, 5))).isFalse();
    assertThat(covered(ring, new Vec2(10, 5))).isFalse();
  }

  @Test
  void courtsAndShaftsInsideTheSlabAreNoGround() {
    var court =
        new Region(
            Region.rectangle(0, 0, 30, 30).outline(),
            List.of(Region.rectangle(10, 10, 20, 20).outline()));
    assertThat(covered(GroundRing.around(floor(court), WIDTH), new Vec2(15, 15))).isFalse();
  }

  @Test
  void groundLiesBetweenSlabsThatStandApart() {
    List<Region> ring =
        GroundRing.around(
            floor(Region.rectangle(0, 0, 5, 5), Region.rectangle(8, 0, 13, 5)), WIDTH);
    assertThat(covered(ring, new Vec2(6.5, 2.5))).isTrue();
    assertThat(covered(ring, new Vec2(2.5, 2.5))).isFalse();
  }

  /** A slit would close the way from the ground onto the slab. */
  @Test
  void slabAndGroundAreOneFreeArea() {
    var turned =
        Region.of(new Vec2(0, 0), new Vec2(17.3, 9.1), new Vec2(12.2, 18.8), new Vec2(-5.1, 9.7));
    FloorOutline floor = floor(turned);
    FloorOutline with = floor.withGround(GroundRing.around(floor, WIDTH));
    assertThat(FreeArea.of(with, List.of(), Length.ofMetres(0.15)).regions()).hasSize(1);
    assertThat(with.onAssumedGround(new Vec2(-5, 0))).isTrue();
    assertThat(with.onAssumedGround(new Vec2(6, 9))).isFalse();
  }

  @Test
  void noWidthOrNoSlabIsNoGround() {
    assertThat(GroundRing.around(floor(Region.rectangle(0, 0, 5, 5)), Length.ZERO)).isEmpty();
    assertThat(GroundRing.around(floor(), WIDTH)).isEmpty();
  }

  private static boolean covered(List<Region> ring, Vec2 at) {
    return ring.stream().anyMatch(r -> r.contains(at));
  }

  private static FloorOutline floor(Region... plate) {
    return new FloorOutline(
        "Level 1",
        Length.ZERO,
        Length.ofMetres(4),
        List.of(plate),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }
}
