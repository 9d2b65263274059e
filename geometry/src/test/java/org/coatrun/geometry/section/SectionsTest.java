package org.coatrun.geometry.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.coatrun.geometry.surface.Progress;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform2;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.SectionMeasure;
import org.junit.jupiter.api.Test;

/** Sections by slicing, against contours and areas that follow from the drawing by hand. */
class SectionsTest {

  private static final OptionalDouble NO = OptionalDouble.empty();

  private static SectionMeasure section(Shape shape) {
    Member member =
        new Member(
            Identity.of(1, "m"),
            Role.BEAM,
            SectionName.NONE,
            new Classification(Substance.STEEL, List.of()),
            List.of(),
            Properties.none(),
            Body.of(
                Transform3.frame(new Vec3(3, 4, 5), new Vec3(1, 2, 0.5), new Vec3(0, 0.3, 1)),
                shape));
    Building building =
        new Building(
            "",
            Vec3.ZERO,
            List.of(),
            List.of(),
            List.of(member),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.<Finding>of());
    var surfaces = SurfaceTakeoff.measure(building, new SurfaceOptions(1), Progress.silent());
    var m = (Measurement.Measured) surfaces.measurements().values().iterator().next();
    return m.section().orElseThrow();
  }

  private static Shape plate(double x, double y, double dx, double dy, double length) {
    return new Shape.Extrusion(
        new Profile.Rectangle("", dx, dy, 0),
        Transform3.translation(new Vec3(x, y, 0)),
        Vec3.Z,
        length);
  }

  @Test
  void aPlateGirderOfThreePlatesIsOneSection() {
    // web 1000 x 12, flanges 300 x 20
    SectionMeasure s =
        section(
            new Shape.Compound(
                List.of(
                    plate(0, 0, 0.012, 1, 9),
                    plate(0, 0.51, 0.3, 0.02, 9),
                    plate(0, -0.51, 0.3, 0.02, 9))));
    assertThat(s.steel().squareMetres()).isCloseTo(0.012 + 2 * 0.006, within(1e-9));
    assertThat(s.heated().metres()).isCloseTo(2 * 1.04 + 4 * 0.3 - 2 * 0.012, within(1e-9));
    assertThat(s.box().metres()).isCloseTo(2 * (1.04 + 0.3), within(1e-9));
    assertThat(s.cornerFactor()).isCloseTo(2 * Math.PI - 4, within(1e-5));
    assertThat(s.varies()).isFalse();
  }

  @Test
  void twoAnglesBackToBackLoseWhatTouchesAndCountBothSidesOfAGap() {
    // 2L 2x2x1/4: PB of one angle is 2 (d + b) = 8 in by the AISC Shapes Database v15.0
    double in = 0.0254;
    Profile angle = new Profile.LShape("L2X2X1/4", 2 * in, 2 * in, 0.25 * in, NO, NO, NO);
    SectionMeasure together = section(pair(angle, in, 0));
    assertThat(together.heated().inches()).isCloseTo(2 * 8 - 2 * 2, within(1e-6));
    SectionMeasure apart = section(pair(angle, in, 3.0 / 8));
    assertThat(apart.heated().inches()).isCloseTo(2 * 8, within(1e-6));
    assertThat(apart.steel().squareInches()).isCloseTo(2 * (2 + 1.75) * 0.25, within(1e-6));
    assertThat(apart.box().inches()).isCloseTo(2 * (2 + 2 + 2 + 3.0 / 8), within(1e-6));
  }

  private static Shape pair(Profile angle, double half, double gapInches) {
    double by = half + gapInches * 0.0254 / 2;
    var right = new Transform2(new Vec2(1, 0), new Vec2(0, 1), new Vec2(by, 0));
    var left = new Transform2(new Vec2(-1, 0), new Vec2(0, 1), new Vec2(-by, 0));
    Profile both =
        new Profile.Composite(
            "2L",
            List.of(new Profile.Placed("", right, angle), new Profile.Placed("", left, angle)));
    return new Shape.Extrusion(both, Transform3.IDENTITY, Vec3.Z, 3);
  }

  private static Profile i(double depth) {
    return new Profile.IShape(
        "", 0.2, depth, 0.01, 0.015, OptionalDouble.of(0), OptionalDouble.of(0), NO);
  }

  @Test
  void aDrawnTaperIsTakenAtItsLessFavourableEnd() {
    SectionMeasure s =
        section(new Shape.TaperedExtrusion(i(0.3), i(0.9), Transform3.IDENTITY, Vec3.Z, 8));
    double small = (4 * 0.2 + 2 * 0.3 - 0.02) / (2 * 0.003 + 0.27 * 0.01);
    double large = (4 * 0.2 + 2 * 0.9 - 0.02) / (2 * 0.003 + 0.87 * 0.01);
    assertThat(large).isGreaterThan(small);
    assertThat(s.heated().metres() / s.steel().squareMetres()).isCloseTo(large, within(1e-6));
    assertThat(s.varies()).isTrue();
  }

  @Test
  void aMeshThatTapersIsTakenNearItsLessFavourableEnd() {
    SectionMeasure s = section(mesh(0.3, 0.9, 8));
    double at = 0.3 + 0.73 * 0.6;
    assertThat(s.varies()).isTrue();
    assertThat(s.steel().squareMetres()).isCloseTo(0.006 + (at - 0.03) * 0.01, within(1e-6));
    assertThat(s.heated().metres()).isCloseTo(0.8 + 2 * at - 0.02, withPercentage(0.5));
  }

  @Test
  void aMeshThatDoesNotTaperIsEven() {
    SectionMeasure s = section(mesh(0.5, 0.5, 8));
    assertThat(s.varies()).isFalse();
    assertThat(s.steel().squareMetres()).isCloseTo(0.006 + 0.47 * 0.01, within(1e-9));
    assertThat(s.heated().metres()).isCloseTo(0.8 + 1 - 0.02, within(1e-9));
  }

  /** An I of 200 mm flanges as plane faces, its depth going from one end's to the other's. */
  private static Shape mesh(double from, double to, double length) {
    double[][] half = {
      {-0.1, -1, 0}, {0.1, -1, 0}, {0.1, -1, 0.015}, {0.005, -1, 0.015},
      {0.005, 1, -0.015}, {0.1, 1, -0.015}, {0.1, 1, 0}, {-0.1, 1, 0},
      {-0.1, 1, -0.015}, {-0.005, 1, -0.015}, {-0.005, -1, 0.015}, {-0.1, -1, 0.015}
    };
    var points = new ArrayList<Vec3>();
    for (int end = 0; end < 2; end++) {
      double d = end == 0 ? from : to;
      for (double[] p : half) {
        points.add(new Vec3(p[0], p[1] * d / 2 + p[2], end * length));
      }
    }
    int n = half.length;
    var faces = new ArrayList<Shape.MeshFace>();
    int[] start = new int[n];
    int[] end = new int[n];
    for (int k = 0; k < n; k++) {
      start[k] = n - 1 - k;
      end[k] = n + k;
      int next = (k + 1) % n;
      faces.add(new Shape.MeshFace(new int[] {k, next, n + next, n + k}, List.of()));
    }
    faces.add(new Shape.MeshFace(start, List.of()));
    faces.add(new Shape.MeshFace(end, List.of()));
    return new Shape.Mesh(points, faces, true);
  }
}
