package org.coatrun.geometry.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.solid.Face;
import org.coatrun.geometry.solid.Solid;
import org.coatrun.geometry.solid.SolidTree;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Curve3;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Surface;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;

/**
 * Exact breps against the closed forms of cylinders, plates with round holes and quarter shells.
 */
class BrepsTest {

  private static final double R = 0.3;
  private static final double H = 2;
  private static final Transform3 TURNED =
      Transform3.frame(new Vec3(4, -3, 2), new Vec3(1, 2, 3), new Vec3(1, 0, -0.4));

  private static Curve3 loop(Segment3... pieces) {
    return new Curve3(List.of(pieces), true);
  }

  private static Segment3 line(Vec3 a, Vec3 b) {
    return new Segment3.Line(a, b);
  }

  /** Round the z axis at a height, from an angle by a sweep in degrees. */
  private static Segment3 arc(double radius, double z, double from, double sweep) {
    return new Segment3.Arc(
        new Vec3(0, 0, z),
        Vec3.X.times(radius),
        Vec3.Y.times(radius),
        Math.toRadians(from),
        Math.toRadians(sweep));
  }

  private static Vec3 at(double radius, double degrees, double z) {
    double a = Math.toRadians(degrees);
    return new Vec3(radius * Math.cos(a), radius * Math.sin(a), z);
  }

  private static Shape.BrepFace plane(Vec3 on, Vec3 normal, Curve3... bounds) {
    Transform3 frame = Transform3.frame(on, normal, normal.anyPerpendicular());
    return new Shape.BrepFace(new Surface.Plane(frame), true, List.of(bounds));
  }

  private static Shape.BrepFace round(double radius, boolean outward, Curve3... bounds) {
    return new Shape.BrepFace(
        new Surface.Cylinder(Transform3.IDENTITY, radius), outward, List.of(bounds));
  }

  private static Shape.BrepFace bottom(double radius) {
    return plane(
        Vec3.ZERO, Vec3.Z.times(-1), loop(arc(radius, 0, 180, -180), arc(radius, 0, 0, -180)));
  }

  private static Shape.BrepFace top(double radius, double z) {
    return plane(new Vec3(0, 0, z), Vec3.Z, loop(arc(radius, z, 0, 180), arc(radius, z, 180, 180)));
  }

  private static void measures(List<Shape.BrepFace> faces, double area, double volume, double by) {
    for (Transform3 t : List.of(Transform3.IDENTITY, TURNED)) {
      var built = (BuildResult.Built) ShapeBuilder.build(new Shape.Brep(faces), t);
      assertThat(built.notes()).isEmpty();
      Part part = built.parts().get(0);
      Solid solid = ((SolidTree.Leaf) part.tree()).solid();
      assertThat(solid.closed()).isTrue();
      double sum = solid.faces().stream().mapToDouble(Face::area).sum();
      assertThat(sum).isCloseTo(area, within(by * area));
      assertThat(solid.volume() * part.fullness()).isCloseTo(volume, within(by * volume));
      assertThat(part.fullness()).isCloseTo(1, within(0.02));
    }
  }

  @Test
  void twoHalvesMakeACylinder() {
    var faces = new ArrayList<>(List.of(bottom(R), top(R, H)));
    for (int i = 0; i < 2; i++) {
      double a = 180 * i;
      faces.add(
          round(
              R,
              true,
              loop(
                  arc(R, 0, a, 180),
                  line(at(R, a + 180, 0), at(R, a + 180, H)),
                  arc(R, H, a + 180, -180),
                  line(at(R, a, H), at(R, a, 0)))));
    }
    measures(faces, 2 * Math.PI * R * (H + R), Math.PI * R * R * H, 1e-8);
  }

  @Test
  void aSeamMayRunUpAndDownOrBeMissing() {
    Curve3 seam =
        loop(
            arc(R, 0, 0, 180),
            arc(R, 0, 180, 180),
            line(at(R, 0, 0), at(R, 0, H)),
            arc(R, H, 360, -180),
            arc(R, H, 180, -180),
            line(at(R, 0, H), at(R, 0, 0)));
    measures(
        List.of(bottom(R), top(R, H), round(R, true, seam)),
        2 * Math.PI * R * (H + R),
        Math.PI * R * R * H,
        1e-8);
    Curve3 low = loop(arc(R, 0, 0, 180), arc(R, 0, 180, 180));
    Curve3 high = loop(arc(R, H, 0, -180), arc(R, H, 180, -180));
    measures(
        List.of(bottom(R), top(R, H), round(R, true, low, high)),
        2 * Math.PI * R * (H + R),
        Math.PI * R * R * H,
        1e-8);
  }

  @Test
  void aCylinderCutAtFortyFiveDegreesEndsInAnEllipse() {
    // the plane z = H + x: the mean height stays H, the ellipse has area pi r2 sqrt 2
    var u = new Vec3(R, 0, R);
    var v = new Vec3(0, R, 0);
    var middle = new Vec3(0, 0, H);
    Segment3 first = new Segment3.Arc(middle, u, v, 0, Math.PI);
    Segment3 second = new Segment3.Arc(middle, u, v, Math.PI, Math.PI);
    Segment3 firstBack = new Segment3.Arc(middle, u, v, Math.PI, -Math.PI);
    Segment3 secondBack = new Segment3.Arc(middle, u, v, 2 * Math.PI, -Math.PI);
    Curve3 side =
        loop(
            arc(R, 0, 0, 180),
            arc(R, 0, 180, 180),
            line(at(R, 0, 0), at(R, 0, H + R)),
            secondBack,
            firstBack,
            line(at(R, 0, H + R), at(R, 0, 0)));
    measures(
        List.of(
            bottom(R),
            plane(middle, new Vec3(-1, 0, 1), loop(first, second)),
            round(R, true, side)),
        2 * Math.PI * R * H + Math.PI * R * R * (1 + Math.sqrt(2)),
        Math.PI * R * R * H,
        1e-6);
  }

  @Test
  void aPlateWithARoundHoleHasTheHolesWall() {
    double a = 0.5;
    double t = 0.02;
    double hole = 0.11;
    var faces = new ArrayList<Shape.BrepFace>();
    for (int end = 0; end < 2; end++) {
      double z = end * t;
      double turn = end == 0 ? -1 : 1;
      faces.add(
          plane(
              new Vec3(0, 0, z),
              Vec3.Z.times(turn),
              square(a, z, turn),
              loop(arc(hole, z, 0, -180 * turn), arc(hole, z, 180, -180 * turn))));
    }
    for (int i = 0; i < 4; i++) {
      Vec3 p = corner(a, i);
      Vec3 q = corner(a, i + 1);
      Vec3 up = Vec3.Z.times(t);
      faces.add(
          plane(
              p,
              q.minus(p).cross(Vec3.Z),
              loop(
                  line(p, q),
                  line(q, q.plus(up)),
                  line(q.plus(up), p.plus(up)),
                  line(p.plus(up), p))));
    }
    faces.add(
        round(
            hole,
            false,
            loop(arc(hole, 0, 0, -180), arc(hole, 0, 180, -180)),
            loop(arc(hole, t, 0, 180), arc(hole, t, 180, 180))));
    double plan = 4 * a * a - Math.PI * hole * hole;
    measures(faces, 2 * plan + (8 * a + 2 * Math.PI * hole) * t, plan * t, 1e-8);
  }

  private static Vec3 corner(double a, int i) {
    return new Vec3(i % 4 == 0 || i % 4 == 3 ? -a : a, i % 4 < 2 ? -a : a, 0);
  }

  private static Curve3 square(double a, double z, double turn) {
    Vec3 up = Vec3.Z.times(z);
    var pieces = new ArrayList<Segment3>();
    for (int i = 0; i < 4; i++) {
      int k = turn > 0 ? i : 4 - i;
      pieces.add(line(corner(a, k).plus(up), corner(a, turn > 0 ? k + 1 : k - 1).plus(up)));
    }
    return new Curve3(pieces, true);
  }

  @Test
  void aPipeWithAWindowLosesTheWindowAndGainsItsCheeks() {
    double in = 0.28;
    double z0 = 0.5;
    double z1 = 1.1;
    double w = 70;
    var faces = new ArrayList<Shape.BrepFace>();
    for (int end = 0; end < 2; end++) {
      double z = end * H;
      double turn = end == 0 ? -180 : 180;
      faces.add(
          plane(
              new Vec3(0, 0, z),
              Vec3.Z.times(Math.signum(turn)),
              loop(arc(R, z, 0, turn), arc(R, z, 180, turn)),
              loop(arc(in, z, 0, -turn), arc(in, z, 180, -turn))));
    }
    for (double r : new double[] {R, in}) {
      Curve3 window =
          loop(
              arc(r, z0, 40, w),
              line(at(r, 40 + w, z0), at(r, 40 + w, z1)),
              arc(r, z1, 40 + w, -w),
              line(at(r, 40, z1), at(r, 40, z0)));
      faces.add(
          round(
              r,
              r == R,
              loop(arc(r, 0, 0, 180), arc(r, 0, 180, 180)),
              loop(arc(r, H, 0, 180), arc(r, H, 180, 180)),
              window));
    }
    for (double z : new double[] {z0, z1}) {
      faces.add(
          plane(
              new Vec3(0, 0, z),
              Vec3.Z.times(z == z0 ? 1 : -1),
              loop(
                  arc(R, z, 40, w),
                  line(at(R, 40 + w, z), at(in, 40 + w, z)),
                  arc(in, z, 40 + w, -w),
                  line(at(in, 40, z), at(R, 40, z)))));
    }
    for (double a : new double[] {40, 40 + w}) {
      Vec3 out = a == 40 ? at(1, 130, 0) : at(1, a - 90, 0);
      faces.add(
          plane(
              at(R, a, 0),
              out,
              loop(
                  line(at(R, a, z0), at(R, a, z1)),
                  line(at(R, a, z1), at(in, a, z1)),
                  line(at(in, a, z1), at(in, a, z0)),
                  line(at(in, a, z0), at(R, a, z0)))));
    }
    double share = w / 360;
    double ring = Math.PI * (R * R - in * in);
    double window = share * 2 * Math.PI * (z1 - z0);
    double area =
        2 * Math.PI * (R + in) * H
            + 2 * ring
            - window * (R + in)
            + 2 * (R - in) * (z1 - z0)
            + 2 * share * ring;
    measures(faces, area, ring * (H - share * (z1 - z0)), 1e-8);
  }

  @Test
  void aQuarterOfACylinderAsARationalSplineHasItsTrueArea() {
    // Piegl and Tiller, The NURBS Book, 7.3: a quarter circle is quadratic with weights 1, √½, 1
    double half = Math.sqrt(0.5);
    var poles = new ArrayList<List<Vec3>>();
    for (Vec3 p : List.of(new Vec3(R, 0, 0), new Vec3(R, R, 0), new Vec3(0, R, 0))) {
      poles.add(List.of(p, p.plus(Vec3.Z.times(H))));
    }
    Surface quarter =
        new Surface.Spline(
            2,
            1,
            poles,
            List.of(List.of(1.0, 1.0), List.of(half, half), List.of(1.0, 1.0)),
            List.of(0.0, 0.0, 0.0, 1.0, 1.0, 1.0),
            List.of(0.0, 0.0, 1.0, 1.0));
    Vec3 o = Vec3.ZERO;
    Vec3 up = Vec3.Z.times(H);
    Vec3 x = at(R, 0, 0);
    Vec3 y = at(R, 90, 0);
    List<Shape.BrepFace> faces =
        List.of(
            new Shape.BrepFace(
                quarter,
                true,
                List.of(
                    loop(
                        arc(R, 0, 0, 90),
                        line(y, y.plus(up)),
                        arc(R, H, 90, -90),
                        line(x.plus(up), x)))),
            plane(o, Vec3.Z.times(-1), loop(line(o, y), arc(R, 0, 90, -90), line(x, o))),
            plane(up, Vec3.Z, loop(line(up, x.plus(up)), arc(R, H, 0, 90), line(y.plus(up), up))),
            plane(
                o,
                Vec3.Y.times(-1),
                loop(line(o, x), line(x, x.plus(up)), line(x.plus(up), up), line(up, o))),
            plane(
                o,
                Vec3.X.times(-1),
                loop(line(o, up), line(up, y.plus(up)), line(y.plus(up), y), line(y, o))));
    double area = Math.PI / 2 * R * H + Math.PI / 2 * R * R + 2 * R * H;
    measures(faces, area, Math.PI / 4 * R * R * H, 1e-6);
  }

  @Test
  void otherSurfacesAreNamed() {
    var torus =
        new Shape.BrepFace(
            new Surface.Torus(Transform3.IDENTITY, 1, 0.1), true, List.of(loop(arc(R, 0, 0, 360))));
    var result = (BuildResult.NotBuilt) ShapeBuilder.build(new Shape.Brep(List.of(torus)), TURNED);
    assertThat(result.code()).isEqualTo(SurfaceFinding.SHAPE_NOT_HANDLED);
    assertThat(result.sentence()).contains("torus");
  }
}
