package org.coatrun.geometry.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What convex solids take of faces, against slices and the overlay of the JTS library. */
class ConvexCoverTest {

  private static final double THIN = 2 * Tolerance.DEFAULT.plane();
  private static final Plane GROUND = Plane.through(0, 0, 0, 0, 0, 1);

  private final Kernel kernel = new Kernel(Tolerance.DEFAULT);

  @Test
  void randomPrismsTakeWhatTheirSlicesShare() {
    Random random = new Random(5);
    int cut = 0;
    for (int run = 0; run < 500; run++) {
      double[] outline = Made.disc(0, 0, 0.3 + random.nextDouble(), 3 + random.nextInt(8));
      Solid prism = Made.prism(outline, -1, random.nextDouble()).mapped(Made.rigid(random));
      Vec3 moved = middle(prism).times(-1).plus(Made.direction(random).times(0.5));
      Vec3 normal = Made.direction(random);
      Plane plane = Plane.through(0, 0, 0, normal.x(), normal.y(), normal.z());
      Geometry face = Rings.FACTORY.createPolygon(Rings.linear(Made.disc(0.2, 0, 1, 4 + run % 3)));

      Remains remains = new Remains(face, kernel);
      Originals body = Originals.of(SolidTree.of(prism), Tolerance.DEFAULT);
      Box near = new Box(-9, -9, -9, 9, 9, 9);
      double took = remains.less(body, plane, near, moved);

      Solid there = prism.mapped(Transform3.translation(moved));
      Geometry slice = kernel.slicer.slice(there, plane, 1);
      double shared = OverlayNGRobust.overlay(face, slice, OverlayNG.INTERSECTION).getArea();
      assertThat(prism.isConvex()).isTrue();
      assertThat(took).as("run %d", run).isCloseTo(shared, within(1e-6));
      assertThat(remains.area()).as("run %d", run).isCloseTo(face.getArea() - took, within(1e-9));
      cut += took > 0 && took < face.getArea() ? 1 : 0;
    }
    assertThat(cut).as("faces that were cut").isGreaterThan(200);
  }

  @Test
  void piecesOutsideAreConvexAndLieSideBySide() {
    ConvexCover cover = ConvexCover.of(Made.disc(0, 0, 1, 7));
    List<double[]> beyond = new ArrayList<>();
    double[] within = cover.cut(new double[] {-2, -2, 2, -2, 2, 2, -2, 2}, THIN, beyond);
    assertThat(Rings.area(within)).isCloseTo(Rings.area(Made.disc(0, 0, 1, 7)), within(1e-12));
    assertThat(beyond).hasSize(7).allMatch(ConvexClip::isRing);
    double area = beyond.stream().mapToDouble(Rings::area).sum();
    assertThat(area + Rings.area(within)).isCloseTo(16, within(1e-12));
  }

  @Test
  void whatLiesApartOrOnlyTouchesIsNotCut() {
    ConvexCover cover = ConvexCover.of(new double[] {0, 0, 1, 0, 1, 1, 0, 1});
    double[] beside = {1, 0, 2, 0, 2, 1, 1, 1};
    double[] far = {5, 5, 6, 5, 6, 6, 5, 6};
    for (double[] ring : List.of(beside, far, beside)) {
      assertThat(cover.cut(ring, THIN, new ArrayList<>())).isNull();
    }
  }

  @Test
  void aCoverOfRoundingTakesNothing() {
    double[] square = {0, 0, 1, 0, 1, 1, 0, 1};
    double[] hair = {0.5, 0.5, 0.6, 0.5, 0.5, 0.5 + 1e-11};
    assertThat(ConvexCover.of(hair).cut(square, THIN, new ArrayList<>())).isNull();
    assertThat(ConvexClip.common(square, hair)).isNull();
  }

  @Test
  void coversOfManyCornersCutAllRound() {
    double[] disc = Made.disc(0, 0, 1, 200);
    List<double[]> beyond = new ArrayList<>();
    double[] within = ConvexCover.of(disc).cut(new double[] {-2, -2, 2, -2, 0, 3}, 0, beyond);
    double area = beyond.stream().mapToDouble(Rings::area).sum();
    assertThat(Rings.area(within)).isCloseTo(Rings.area(disc), within(1e-9));
    assertThat(area + Rings.area(within)).isCloseTo(10, within(1e-9));
  }

  @Test
  void aBodyFillsInFrontOfThePlaneItStandsOnAndNotBehindOrBelowOne() {
    Solid box = Made.box(0, 0, 0, 2, 3, 1);
    assertThat(fill(box, Vec3.ZERO)).as("standing on it").isCloseTo(6, within(1e-12));
    assertThat(fill(box, new Vec3(0, 0, -0.5))).as("through it").isCloseTo(6, within(1e-12));
    assertThat(fill(box, new Vec3(0, 0, -1))).as("up to it from behind").isZero();
    assertThat(fill(box, new Vec3(0, 0, 0.5))).as("above it").isZero();
  }

  private static double fill(Solid solid, Vec3 moved) {
    ConvexCover cover = ConvexCover.of(solid, GROUND, moved, Tolerance.DEFAULT.plane());
    return cover == null ? 0 : cover.in(new Extent2(-10, -10, 10, 10)).getArea();
  }

  @Test
  void dentedAndHollowSolidsAreNotConvex() {
    assertThat(Made.prism(Made.iShape(0.2, 0.3, 0.01, 0.02), 0, 3).isConvex()).isFalse();
    assertThat(Made.prism(Made.disc(0, 0, 1, 6), 0, 3).isConvex()).isTrue();
  }

  private static Vec3 middle(Solid solid) {
    Box b = solid.bounds();
    return new Vec3(b.centreX(), b.centreY(), b.centreZ());
  }
}
