package org.coatrun.geometry.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.coatrun.geometry.build.Building.area;
import static org.coatrun.geometry.build.Building.built;
import static org.coatrun.geometry.build.Building.closed;
import static org.coatrun.geometry.build.Building.volume;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.coatrun.geometry.solid.SolidTree;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;

/** Meshes and combinations against boxes that can be reckoned by hand. */
class MeshAndCutTest {

  private static final int[][] TRIANGLES = {
    {0, 2, 1}, {0, 3, 2}, {4, 5, 6}, {4, 6, 7}, {0, 1, 5}, {0, 5, 4}, {1, 2, 6}, {1, 6, 5},
    {2, 3, 7}, {2, 7, 6}, {3, 0, 4}, {3, 4, 7}
  };
  private static final Shape BOX = new Shape.Block(Transform3.IDENTITY, 2, 3, 4);

  @Test
  void aBoxOfTrianglesIsABoxOfSixFaces() {
    var built = built(mesh(TRIANGLES, true, false));
    assertThat(closed(built)).isTrue();
    assertThat(area(built)).isCloseTo(52, close());
    assertThat(volume(built)).isCloseTo(24, close());
    assertThat(((SolidTree.Leaf) built.parts().get(0).tree()).solid().faces()).hasSize(6);
  }

  @Test
  void allNormalsInwardAndUnsharedPointsAreCured() {
    for (boolean shared : new boolean[] {true, false}) {
      var built = built(mesh(TRIANGLES, shared, true));
      assertThat(closed(built)).isTrue();
      assertThat(volume(built)).isCloseTo(24, close());
      assertThat(area(built)).isCloseTo(52, close());
      assertThat(built.notes()).isEmpty();
    }
  }

  @Test
  void facesTurnedAtRandomAreTurnedAlike() {
    int[][] mixed = TRIANGLES.clone();
    for (int i = 0; i < mixed.length; i += 3) {
      mixed[i] = new int[] {mixed[i][0], mixed[i][2], mixed[i][1]};
    }
    var built = built(mesh(mixed, true, false));
    assertThat(closed(built)).isTrue();
    assertThat(volume(built)).isCloseTo(24, close());
  }

  @Test
  void anOpenShellHasAreaButNoInside() {
    int[][] open = java.util.Arrays.copyOf(TRIANGLES, 10);
    var built = built(mesh(open, true, false));
    assertThat(closed(built)).isFalse();
    assertThat(area(built)).isCloseTo(52 - 12, close());
    assertThat(built.notes())
        .singleElement()
        .extracting(BuildResult.Note::code)
        .isEqualTo(SurfaceFinding.OPEN_SHELL);
  }

  @Test
  void aStretchedMappingRecomputesAreas() {
    var by = new Transform3(new Vec3(2, 0, 0), Vec3.Y, new Vec3(0, 0, -1), Vec3.ZERO);
    var built = built(new Shape.Placed(by, BOX));
    assertThat(area(built)).isCloseTo(2 * (4 * 3 + 4 * 4 + 3 * 4), close());
    assertThat(volume(built)).isCloseTo(48, close());
  }

  @Test
  void halfSpacesCutOnTheSideThatTheyFill() {
    var upper = new Shape.HalfSpace(new Vec3(9, 9, 3), new Vec3(0, 0, -1), Optional.empty());
    var cut = built(new Shape.Combination(Shape.Operator.DIFFERENCE, BOX, upper));
    assertThat(volume(cut)).isCloseTo(2 * 3 * 3, close());
    assertThat(area(cut)).isCloseTo(2 * (6 + 6 + 9), close());
    var kept = built(new Shape.Combination(Shape.Operator.INTERSECTION, BOX, upper));
    assertThat(volume(kept)).isCloseTo(2 * 3 * 1, close());
    var turned = built(new Shape.Combination(Shape.Operator.INTERSECTION, upper, BOX));
    assertThat(volume(turned)).isCloseTo(2 * 3 * 1, close());
  }

  @Test
  void aHalfSpaceWhosePlaneLiesOnAFaceStillCuts() {
    var below = new Shape.HalfSpace(Vec3.ZERO, new Vec3(0, 0, -1), Optional.empty());
    var kept = built(new Shape.Combination(Shape.Operator.INTERSECTION, BOX, below));
    assertThat(volume(kept)).isCloseTo(24, close());
  }

  @Test
  void aBoundedHalfSpaceIsBoundedAcrossOnly() {
    var outline =
        Curve2.polyline(
            List.of(new Vec2(-1, -1), new Vec2(1, -1), new Vec2(1, 9), new Vec2(-1, 9)), true);
    var notch =
        new Shape.HalfSpace(
            new Vec3(0, 0, 3),
            new Vec3(0, 0, -1),
            Optional.of(new Shape.Bound(Transform3.IDENTITY, outline)));
    var cut = built(new Shape.Combination(Shape.Operator.DIFFERENCE, BOX, notch));
    assertThat(volume(cut)).isCloseTo(24 - 3, close());
    assertThat(area(cut)).isCloseTo(52 - 2, close());
  }

  @Test
  void nestedCutsGoAllTheWayDown() {
    Shape whole = new Shape.Block(Transform3.IDENTITY, 40, 1, 1);
    Shape shape = whole;
    for (int i = 0; i < 39; i++) {
      var at = Transform3.translation(new Vec3(i + 0.25, 0.25, 0.5));
      Shape pocket = new Shape.Placed(at, new Shape.Block(Transform3.IDENTITY, 0.5, 0.5, 0.5));
      shape = new Shape.Combination(Shape.Operator.DIFFERENCE, shape, pocket);
    }
    var built = built(shape);
    assertThat(volume(built)).isCloseTo(40 - 39 * 0.125, close());
    assertThat(area(built)).isCloseTo(162 + 39 * 4 * 0.25, close());
  }

  @Test
  void unionsHaveNoFilmBetween() {
    Shape second = new Shape.Placed(Transform3.translation(new Vec3(2, 0, 0)), BOX);
    var built = built(new Shape.Combination(Shape.Operator.UNION, BOX, second));
    assertThat(volume(built)).isCloseTo(48, close());
    assertThat(area(built)).isCloseTo(2 * (12 + 16 + 12), close());
  }

  @Test
  void aRoundHoleTakesItsMouthsAndAddsItsWall() {
    Shape plate =
        new Shape.Extrusion(
            new Profile.Rectangle("", 0.3, 0.3, 0), Transform3.IDENTITY, Vec3.Z, 0.02);
    Shape drill =
        new Shape.Extrusion(
            new Profile.Circle("", 0.05), Transform3.translation(new Vec3(0, 0, -1)), Vec3.Z, 2);
    var cut = built(new Shape.Combination(Shape.Operator.DIFFERENCE, plate, drill));
    double mouth = Math.PI * 0.0025;
    assertThat(volume(cut)).isCloseTo((0.09 - mouth) * 0.02, close());
    assertThat(area(cut))
        .isCloseTo(2 * (0.09 - mouth) + 1.2 * 0.02 + 2 * Math.PI * 0.05 * 0.02, close());
  }

  @Test
  void anEmptyCompoundIsSaidToBeEmpty() {
    var result = ShapeBuilder.build(new Shape.Compound(List.of()), Transform3.IDENTITY);
    assertThat(((BuildResult.NotBuilt) result).code()).isEqualTo(SurfaceFinding.EMPTY_BODY);
  }

  /** Triangles of the box 2 by 3 by 4. */
  private static Shape mesh(int[][] triangles, boolean shared, boolean inward) {
    Vec3[] corners = {
      Vec3.ZERO,
      new Vec3(2, 0, 0),
      new Vec3(2, 3, 0),
      new Vec3(0, 3, 0),
      new Vec3(0, 0, 4),
      new Vec3(2, 0, 4),
      new Vec3(2, 3, 4),
      new Vec3(0, 3, 4)
    };
    var points = new ArrayList<>(shared ? List.of(corners) : List.<Vec3>of());
    var faces = new ArrayList<Shape.MeshFace>();
    for (int[] t : triangles) {
      int[] ring = inward ? new int[] {t[0], t[2], t[1]} : t.clone();
      for (int k = 0; !shared && k < 3; k++) {
        points.add(corners[ring[k]]);
        ring[k] = points.size() - 1;
      }
      faces.add(new Shape.MeshFace(ring, List.of()));
    }
    return new Shape.Mesh(points, faces, true);
  }

  private static Percentage close() {
    return withPercentage(1e-7);
  }
}
