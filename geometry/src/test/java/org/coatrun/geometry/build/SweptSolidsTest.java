package org.coatrun.geometry.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.coatrun.geometry.build.Building.area;
import static org.coatrun.geometry.build.Building.built;
import static org.coatrun.geometry.build.Building.closed;
import static org.coatrun.geometry.build.Building.volume;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.coatrun.geometry.profile.OutlineResult;
import org.coatrun.geometry.profile.Outlines;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.geometry.solid.FaceLabel.Kind;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Curve3;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;

/** Sweeps against closed formulas: prisms, Guldin's rules (Pappus), frusta. */
class SweptSolidsTest {

  private static final OptionalDouble NO = OptionalDouble.empty();
  private static final Profile IPE300 =
      new Profile.IShape("IPE300", 0.15, 0.3, 0.0071, 0.0107, OptionalDouble.of(0.015), NO, NO);
  private static final Profile TUBE = new Profile.CircleHollow("CHS193.7x8", 0.09685, 0.008);
  private static final Profile BOX =
      new Profile.RectangleHollow(
          "RHS200x100x8", 0.1, 0.2, 0.008, OptionalDouble.of(0.008), OptionalDouble.of(0.012));

  private final Random random = new Random(7);

  @Test
  void extrusionsMeasureTheClosedFormula() {
    for (Profile p : List.of(IPE300, TUBE, BOX, new Profile.Ellipse("", 0.2, 0.1))) {
      SectionOutline o = outline(p);
      var built = built(new Shape.Extrusion(p, Transform3.IDENTITY, Vec3.Z, 3.7));
      assertThat(closed(built)).isTrue();
      assertThat(area(built, Kind.SIDE)).isCloseTo(3.7 * o.outerPerimeter(), close());
      assertThat(area(built, Kind.INNER_SIDE)).isCloseTo(3.7 * o.innerPerimeter(), within(1e-10));
      assertThat(area(built, Kind.START)).isCloseTo(o.area(), close());
      assertThat(area(built, Kind.END)).isCloseTo(o.area(), close());
      assertThat(volume(built)).isCloseTo(3.7 * o.area(), close());
      assertThat(built.run().orElseThrow().length()).isCloseTo(3.7, close());
    }
  }

  @Test
  void anyRigidPlaceLeavesAreaAndVolume() {
    Shape shape = new Shape.Extrusion(IPE300, Transform3.IDENTITY, Vec3.Z, 2);
    var plain = built(shape);
    for (int i = 0; i < 100; i++) {
      Transform3 at = Transform3.frame(vector().times(100), vector(), vector());
      Transform3 mirrored =
          i % 2 == 0 ? at : new Transform3(at.x().times(-1), at.y(), at.z(), at.origin());
      var moved = built(shape, mirrored);
      assertThat(closed(moved)).isTrue();
      assertThat(area(moved)).isCloseTo(area(plain), close());
      assertThat(volume(moved)).isCloseTo(volume(plain), close());
      assertThat(moved.run().orElseThrow().start().outerPerimeter())
          .isCloseTo(plain.run().orElseThrow().start().outerPerimeter(), close());
    }
  }

  @Test
  void anObliqueRoundHasTheContourOfItsEllipse() {
    // a round stretched to twice its width and swept along: contour of the ellipse 2:1,
    // 4 a E(m) with m = 3/4: 9.68844822 r (Abramowitz and Stegun, table 17.1: E(60°) = 1.21105603)
    var stretched = new Transform3(new Vec3(2, 0, 0), Vec3.Y, Vec3.Z, Vec3.ZERO);
    var built =
        built(
            new Shape.Placed(
                stretched,
                new Shape.Extrusion(new Profile.Circle("", 0.1), Transform3.IDENTITY, Vec3.Z, 5)));
    assertThat(area(built, Kind.SIDE)).isCloseTo(0.1 * 8 * 1.21105603 * 5, withPercentage(1e-6));
    assertThat(volume(built)).isCloseTo(2 * Math.PI * 0.01 * 5, close());
    assertThat(built.run().orElseThrow().start().outerPerimeter())
        .isCloseTo(0.1 * 8 * 1.21105603, withPercentage(1e-6));
  }

  @Test
  void aSlantedSweepHasTheSectionSquareToItsWay() {
    // 3-4-5: the square prism leans by 4 in 3; its section square to the way is 0.2 x 0.12
    Vec3 way = new Vec3(0.8, 0, 0.6);
    var built =
        built(
            new Shape.Extrusion(
                new Profile.Rectangle("", 0.2, 0.2, 0), Transform3.IDENTITY, way, 5));
    assertThat(volume(built)).isCloseTo(0.04 * 3, close());
    assertThat(area(built, Kind.SIDE)).isCloseTo((0.4 + 0.24) * 5, close());
    Run run = built.run().orElseThrow();
    assertThat(run.length()).isCloseTo(5, close());
    assertThat(run.start().area()).isCloseTo(0.024, close());
    assertThat(run.start().outerPerimeter()).isCloseTo(0.64, close());
  }

  @Test
  void revolutionsFollowGuldin() {
    for (double angle : new double[] {0.3, -1.5, 4, 2 * Math.PI}) {
      for (Profile p : List.of(IPE300, BOX, TUBE)) {
        var built =
            built(new Shape.Revolution(p, Transform3.IDENTITY, new Vec3(-6, 0, 0), Vec3.Y, angle));
        SectionOutline o = outline(p);
        double way = Math.abs(angle) * 6;
        assertThat(closed(built)).isTrue();
        assertThat(volume(built)).isCloseTo(o.area() * way, close());
        assertThat(area(built, Kind.SIDE)).isCloseTo(o.outerPerimeter() * way, close());
        assertThat(area(built, Kind.INNER_SIDE)).isCloseTo(o.innerPerimeter() * way, within(1e-8));
        assertThat(built.run().orElseThrow().length()).isCloseTo(way, close());
      }
    }
  }

  @Test
  void roundPrimitivesMeasureTheirFormulas() {
    var ball = built(new Shape.Sphere(Transform3.IDENTITY, 0.5));
    assertThat(area(ball)).isCloseTo(Math.PI, close());
    assertThat(volume(ball)).isCloseTo(Math.PI / 6, close());
    assertThat(closed(ball)).isTrue();
    var cone = built(new Shape.Cone(Transform3.IDENTITY, 3, 4));
    assertThat(area(cone)).isCloseTo(Math.PI * 3 * (3 + 5), close());
    assertThat(volume(cone)).isCloseTo(Math.PI * 12, close());
    var pyramid = built(new Shape.Pyramid(Transform3.IDENTITY, 6, 6, 4));
    assertThat(area(pyramid)).isCloseTo(36 + 4 * 15, close());
    assertThat(volume(pyramid)).isCloseTo(48, close());
    var cylinder = built(new Shape.Cylinder(Transform3.IDENTITY, 1, 2));
    assertThat(area(cylinder)).isCloseTo(6 * Math.PI, close());
    var block = built(new Shape.Block(Transform3.IDENTITY, 1, 2, 3));
    assertThat(area(block)).isCloseTo(22, close());
    assertThat(volume(block)).isCloseTo(6, close());
  }

  @Test
  void anAxisThroughTheProfileIsRefused() {
    var shape = new Shape.Revolution(IPE300, Transform3.IDENTITY, Vec3.ZERO, Vec3.Y, 1);
    var result = (BuildResult.NotBuilt) ShapeBuilder.build(shape, Transform3.IDENTITY);
    assertThat(result.code()).isEqualTo(SurfaceFinding.IMPOSSIBLE_SECTION);
  }

  @Test
  void taperedSweepsAreFrusta() {
    // frustum of a pyramid: h/3 (A1 + A2 + sqrt(A1 A2)), sides as trapezia
    var small = new Profile.Rectangle("", 1, 1, 0);
    var large = new Profile.Rectangle("", 3, 3, 0);
    var built = built(new Shape.TaperedExtrusion(small, large, Transform3.IDENTITY, Vec3.Z, 2));
    assertThat(closed(built)).isTrue();
    assertThat(volume(built)).isCloseTo(2 * (1 + 9 + 3) / 3.0, close());
    assertThat(area(built, Kind.SIDE)).isCloseTo(4 * 2 * Math.sqrt(5), close());
    // frustum of a cone with a hole of even radius
    var a = new Profile.CircleHollow("", 0.4, 0.3);
    var b = new Profile.CircleHollow("", 0.7, 0.6);
    var cone = built(new Shape.TaperedExtrusion(a, b, Transform3.IDENTITY, Vec3.Z, 0.4));
    assertThat(area(cone, Kind.SIDE)).isCloseTo(Math.PI * 1.1 * 0.5, close());
    assertThat(area(cone, Kind.INNER_SIDE)).isCloseTo(2 * Math.PI * 0.1 * 0.4, close());
    assertThat(cone.run().orElseThrow().tapered()).isTrue();
  }

  @Test
  void aTaperedBeamHasTheMeanOfItsContours() {
    // web depth grows evenly: sides are plane but for the sloped flanges
    var deep = new Profile.IShape("", 0.15, 0.6, 0.0071, 0.0107, OptionalDouble.of(0.015), NO, NO);
    var built = built(new Shape.TaperedExtrusion(IPE300, deep, Transform3.IDENTITY, Vec3.Z, 6));
    double web = 2 * 0.3 * 6 / 2;
    double flat = outline(IPE300).outerPerimeter() * 6 + web;
    assertThat(closed(built)).isTrue();
    assertThat(area(built, Kind.SIDE)).isBetween(flat, flat * 1.001);
  }

  @Test
  void unlikeEndsAreJoinedByTheirLengths() {
    var round = new Profile.Circle("", 0.1);
    var square = new Profile.Rectangle("", 0.2, 0.2, 0);
    var built = built(new Shape.TaperedExtrusion(round, square, Transform3.IDENTITY, Vec3.Z, 1));
    assertThat(closed(built)).isTrue();
    assertThat(volume(built)).isBetween(Math.PI * 0.01, 0.04);
  }

  @Test
  void sweptDiscsFollowTheirWay() {
    // a straight, a quarter bend and a straight: length 2 + π/2 · 0.5 + 1
    Curve3 way =
        new Curve3(
            List.of(
                new Segment3.Line(Vec3.ZERO, new Vec3(2, 0, 0)),
                new Segment3.Arc(
                    new Vec3(2, 0.5, 0),
                    new Vec3(0.5, 0, 0),
                    new Vec3(0, 0.5, 0),
                    -Math.PI / 2,
                    Math.PI / 2),
                new Segment3.Line(new Vec3(2.5, 0.5, 0), new Vec3(2.5, 1.5, 0))),
            false);
    double length = 3 + Math.PI / 4;
    var rod = built(new Shape.SweptDisk(way, 0.01, NO, NO));
    assertThat(closed(rod)).isTrue();
    assertThat(area(rod, Kind.SIDE)).isCloseTo(2 * Math.PI * 0.01 * length, close());
    assertThat(volume(rod)).isCloseTo(Math.PI * 1e-4 * length, close());
    var pipe = built(new Shape.SweptDisk(way, 0.01, OptionalDouble.of(0.008), NO));
    assertThat(area(pipe, Kind.INNER_SIDE)).isCloseTo(2 * Math.PI * 0.008 * length, close());
    assertThat(pipe.run().orElseThrow().length()).isCloseTo(length, close());
  }

  @Test
  void filletsRoundTheCornersOfAPolyline() {
    Curve3 way = Curve3.polyline(List.of(Vec3.ZERO, new Vec3(2, 0, 0), new Vec3(2, 0, 2)), false);
    var built = built(new Shape.SweptDisk(way, 0.01, NO, OptionalDouble.of(0.2)));
    double length = 4 - 0.4 + Math.PI / 2 * 0.2;
    assertThat(area(built, Kind.SIDE)).isCloseTo(2 * Math.PI * 0.01 * length, close());
  }

  @Test
  void cornersAreMitred() {
    Curve3 way = Curve3.polyline(List.of(Vec3.ZERO, new Vec3(2, 0, 0), new Vec3(2, 0, 2)), false);
    var built = built(new Shape.SweptDisk(way, 0.01, NO, NO));
    assertThat(closed(built)).isTrue();
    assertThat(area(built, Kind.SIDE)).isCloseTo(2 * Math.PI * 0.01 * 4, close());
    assertThat(volume(built)).isCloseTo(Math.PI * 1e-4 * 4, close());
  }

  @Test
  void straightSweepsOfEveryKindAreTheExtrusion() {
    var extrusion = built(new Shape.Extrusion(IPE300, Transform3.IDENTITY, Vec3.Z, 4));
    Curve3 line = Curve3.polyline(List.of(Vec3.ZERO, new Vec3(0, 0, 4)), false);
    var guides = new ArrayList<Shape.Guide>();
    guides.add(new Shape.Guide.FixedReference(Vec3.X));
    guides.add(
        new Shape.Guide.OnSurface(
            new org.coatrun.shared.shape.Surface.Plane(
                Transform3.frame(Vec3.ZERO, Vec3.X, Vec3.Y))));
    for (Shape.Guide guide : guides) {
      var swept = built(new Shape.Sweep(IPE300, Transform3.IDENTITY, line, guide));
      assertThat(area(swept)).isCloseTo(area(extrusion), close());
      assertThat(volume(swept)).isCloseTo(volume(extrusion), close());
      assertThat(swept.run().orElseThrow().start().bounds().height()).isCloseTo(0.3, close());
    }
    var sectioned =
        built(
            new Shape.Sectioned(
                List.of(
                    new Shape.Station(IPE300, Transform3.IDENTITY),
                    new Shape.Station(IPE300, Transform3.translation(new Vec3(0, 0, 1))),
                    new Shape.Station(IPE300, Transform3.translation(new Vec3(0, 0, 4))))));
    assertThat(area(sectioned)).isCloseTo(area(extrusion), close());
    assertThat(volume(sectioned)).isCloseTo(volume(extrusion), close());
  }

  @Test
  void aClosedRingHasNoEnds() {
    Curve3 ring =
        new Curve3(List.of(new Segment3.Arc(Vec3.ZERO, Vec3.X, Vec3.Y, 0, 2 * Math.PI)), true);
    var built = built(new Shape.SweptDisk(ring, 0.1, NO, NO));
    assertThat(closed(built)).isTrue();
    assertThat(area(built)).isCloseTo(4 * Math.PI * Math.PI * 0.1, close());
    Curve3 frame =
        Curve3.polyline(
            List.of(Vec3.ZERO, new Vec3(2, 0, 0), new Vec3(2, 1, 0), new Vec3(0, 1, 0)), true);
    var mitred = built(new Shape.SweptDisk(frame, 0.01, NO, NO));
    assertThat(closed(mitred)).isTrue();
    assertThat(area(mitred)).isCloseTo(2 * Math.PI * 0.01 * 6, close());
  }

  private Vec3 vector() {
    return new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
  }

  private static SectionOutline outline(Profile p) {
    return ((OutlineResult.Drawn) Outlines.of(p)).outline();
  }

  private static org.assertj.core.data.Percentage close() {
    return withPercentage(1e-7);
  }
}
