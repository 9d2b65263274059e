package org.coatrun.geometry.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.rules.CoatVolume;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform2;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;

/**
 * The coat's own volume against Steiner's formula for parallel bodies: P t + Σ a/2 t² at convex
 * corners that turn by a, less tan(a/2) t² at concave ones.
 */
class CoatOutlineTest {

  private static final OptionalDouble NO = OptionalDouble.empty();
  private static final double T = 0.0254;

  private final List<Member> members = new ArrayList<>();
  private final List<Slab> slabs = new ArrayList<>();

  /** W16X26 by the AISC Shapes Database v15.0: d 15.7, bf 5.5, tw 0.25, tf 0.345, all in in. */
  private static Profile beam(OptionalDouble fillet) {
    double in = 0.0254;
    return new Profile.IShape("W16X26", 5.5 * in, 15.7 * in, 0.25 * in, 0.345 * in, fillet, NO, NO);
  }

  private SectionMeasure section(Profile profile) {
    Transform3 lying = new Transform3(Vec3.Y, Vec3.Z, Vec3.X, Vec3.ZERO);
    members.add(
        new Member(
            Identity.of(1, "m"),
            Role.BEAM,
            SectionName.NONE,
            new Classification(Substance.STEEL, List.of()),
            List.of(),
            Properties.none(),
            Body.of(Transform3.IDENTITY, new Shape.Extrusion(profile, lying, Vec3.Z, 6))));
    Building building =
        new Building(
            "",
            Vec3.ZERO,
            List.of(),
            List.of(),
            members,
            List.of(),
            slabs,
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

  private void slab(double bottom) {
    Transform3 at = Transform3.translation(new Vec3(3, 0, bottom));
    slabs.add(
        new Slab(
            Identity.of(2, "slab"),
            Slab.Kind.FLOOR,
            List.of(),
            Properties.none(),
            Body.of(
                Transform3.IDENTITY,
                new Shape.Extrusion(new Profile.Rectangle("", 8, 4, 0), at, Vec3.Z, 0.15))));
  }

  @Test
  void aSharpSectionAllRoundHasEightConvexAndFourConcaveCorners() {
    SectionMeasure s = section(beam(OptionalDouble.of(0)));
    assertThat(s.cornerFactor()).isCloseTo(CoatVolume.cornerFactorFourSided(), within(1e-6));
    assertThat(s.coatContour(Length.ofMetres(T)).metres())
        .isCloseTo(s.heated().metres() + (2 * Math.PI - 4) * T, within(1e-8));
  }

  @Test
  void underADeckTheCoatEndsSquareAtTheFlange() {
    slab(15.7 * 0.0254 / 2);
    SectionMeasure s = section(beam(OptionalDouble.of(0)));
    assertThat(s.heated().inches()).isCloseTo(2 * 15.7 + 3 * 5.5 - 2 * 0.25, within(1e-6));
    assertThat(s.cornerFactor()).isCloseTo(CoatVolume.cornerFactorThreeSided(), within(1e-6));
  }

  @Test
  void aFilletSmallerThanTheCoatIsFilledLikeTheCornerItRounds() {
    // t > r: the offset of a root fillet is the corner of the web's and flange's own offsets, so
    // the coat is that of the sharp section less what the fillet of steel takes: (1 - pi/4) r2
    // each; within what strips of an arc allow
    double r = 0.402 * T;
    SectionMeasure s = section(beam(OptionalDouble.of(r)));
    double sharp = 2 * 15.7 * T + 4 * 5.5 * T - 2 * 0.25 * T;
    double want = sharp * T + (2 * Math.PI - 4) * T * T - 4 * (1 - Math.PI / 4) * r * r;
    assertThat(s.coatContour(Length.ofMetres(T)).metres() * T).isCloseTo(want, within(2e-4 * want));
  }

  @Test
  void aTubeHasPiWhateverItsCorners() {
    assertThat(section(new Profile.CircleHollow("CHS", 0.1, 0.01)).cornerFactor())
        .isCloseTo(Math.PI, within(1e-6));
    members.clear();
    SectionMeasure square =
        section(
            new Profile.RectangleHollow(
                "RHS", 0.2, 0.1, 0.008, OptionalDouble.of(0.008), OptionalDouble.of(0.016)));
    assertThat(square.cornerFactor()).isCloseTo(CoatVolume.cornerFactorConvex(), within(1e-6));
  }

  @Test
  void coatsThatMeetBetweenTwoAnglesCountOnce() {
    // two bars of 60 x 10 mm, 20 mm apart: the gap is filled, not coated twice by 25.4 mm
    Profile bar = new Profile.Rectangle("", 0.01, 0.06, 0);
    Profile pair =
        new Profile.Composite(
            "",
            List.of(
                new Profile.Placed("", moved(-0.015), bar),
                new Profile.Placed("", moved(0.015), bar)));
    SectionMeasure s = section(pair);
    double lens = capsOverTheGap();
    double want = 2 * (2 * 0.06 + 0.02) * T - 0.06 * (2 * T - 0.02) + 2 * Math.PI * T * T;
    // above and below, what both coats' rounds share is not counted twice; by integration
    double got = s.coatContour(Length.ofMetres(T)).metres() * T;
    double solid = 0.02 * 0.06 + 2 * (0.06 + 0.01 + 0.01) * T;
    assertThat(got).isCloseTo(solid + Math.PI * T * T + 2 * lens, within(1e-5 * want));
    assertThat(got).isLessThan(want);
  }

  /**
   * Area over the 20 mm gap under two arcs of radius t about the bars' inner corners, less none.
   */
  private static double capsOverTheGap() {
    int n = 20000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double x = 0.02 * (i + 0.5) / n;
      double near = Math.min(x, 0.02 - x);
      sum += Math.sqrt(T * T - near * near) * 0.02 / n;
    }
    return sum;
  }

  private static Transform2 moved(double x) {
    return new Transform2(new Vec2(1, 0), new Vec2(0, 1), new Vec2(x, 0));
  }
}
