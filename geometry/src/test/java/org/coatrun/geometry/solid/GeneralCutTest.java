package org.coatrun.geometry.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;

/** Solids lying anyhow, against clipping polygons in space. */
class GeneralCutTest {

  private static final double EXACT = 1e-9;

  private static Solid prism(Random r) {
    double[] outline = Made.disc(0, 0, 0.2 + r.nextDouble(), 3 + r.nextInt(9));
    Transform3 near =
        Transform3.frame(
            Made.direction(r).times(0.5 * r.nextDouble()), Made.direction(r), Made.direction(r));
    return Made.prism(outline, -0.5 * r.nextDouble() - 0.05, 0.5 * r.nextDouble()).mapped(near);
  }

  private static void close(double value, double want, String what) {
    assertThat(value).as(what).isCloseTo(want, within(EXACT * (1 + want)));
  }

  @Test
  void convexSolidsMadeOneInEachWay() {
    Random random = new Random(21);
    for (int i = 0; i < 600; i++) {
      Solid a = prism(random);
      Solid b = prism(random);
      ConvexReference.Shared s = ConvexReference.of(a, b);
      String what = "case " + i;
      Boundary less = Made.less(a, b);
      close(less.volume(), a.volume() - s.volume(), what);
      close(less.area(), a.area() - s.firstInSecond() + s.secondInFirst(), what);
      Boundary both = Made.common(a, b);
      close(both.volume(), s.volume(), what);
      close(both.area(), s.firstInSecond() + s.secondInFirst(), what);
      Boundary either = Made.union(a, b);
      close(either.volume(), a.volume() + b.volume() - s.volume(), what);
      close(either.area(), a.area() + b.area() - s.firstInSecond() - s.secondInFirst(), what);
      assertThat(less.gape()).as(what).isLessThan(1e-9);
    }
  }

  @Test
  void aConcaveHostIsTheSumOfItsBoxes() {
    Random random = new Random(22);
    for (int i = 0; i < 200; i++) {
      Solid whole = Made.prism(Made.iShape(0.6, 0.8, 0.1, 0.15), -1, 1);
      Solid[] parts = {
        Made.box(-0.3, -0.4, -1, 0.3, -0.25, 1),
        Made.box(-0.05, -0.25, -1, 0.05, 0.25, 1),
        Made.box(-0.3, 0.25, -1, 0.3, 0.4, 1)
      };
      Solid cutter = prism(random);
      double want = 0;
      for (Solid part : parts) {
        want += part.volume() - ConvexReference.of(part, cutter).volume();
      }
      Boundary b = Made.less(whole, cutter);
      close(b.volume(), want, "case " + i);
      assertThat(b.gape()).isLessThan(1e-9);
    }
  }

  @Test
  void turningMirroringAndScalingChangeNothing() {
    Random random = new Random(23);
    for (int i = 0; i < 60; i++) {
      Solid host = Made.prism(Made.iShape(0.2, 0.4, 0.01, 0.015), 0, 3);
      Solid cutter = prism(random);
      Solid other = prism(random);
      Boundary plain = Made.less(host, cutter, other);
      double k = 0.3 + random.nextDouble();
      Transform3 scale =
          new Transform3(
              new Vec3(-k, 0, 0), new Vec3(0, k, 0), new Vec3(0, 0, k), new Vec3(1, 2, 3));
      Transform3 by = Made.rigid(random).after(scale);
      Boundary moved = Made.less(host.mapped(by), cutter.mapped(by), other.mapped(by));
      close(moved.area(), plain.area() * k * k, "case " + i);
      close(moved.volume(), plain.volume() * k * k * k, "case " + i);
    }
  }

  @Test
  void aCutThroughAFaceIsTheLimitOfTheShiftedCut() {
    Solid host = Made.prism(Made.iShape(0.2, 0.4, 0.01, 0.015), 0, 3);
    // a flush cope: top of the flange, end of the beam and side of the web all coincide
    Solid flush = Made.box(0.005, 0.185, 2.8, 0.1, 0.2, 3);
    double shift = 1e-4;
    Solid near = Made.box(0.005 + shift, 0.185 + shift, 2.8 + shift, 0.2, 0.3, 4);
    Boundary a = Made.less(host, flush);
    Boundary b = Made.less(host, near);
    assertThat(a.volume()).isCloseTo(host.volume() - 0.095 * 0.015 * 0.2, within(1e-12));
    assertThat(a.volume()).isCloseTo(b.volume(), within(1e-5));
    assertThat(a.area()).isCloseTo(host.area() - 2 * 0.095 * 0.2, within(1e-9));
    assertThat(a.gape()).isLessThan(1e-12);
  }

  @Test
  void noiseUnderTheTolerancesLeavesNoFilms() {
    Random random = new Random(24);
    for (int i = 0; i < 100; i++) {
      Solid host = Made.prism(Made.iShape(0.2, 0.4, 0.01, 0.015), 0, 3);
      double e = 1.5e-5 * (2 * random.nextDouble() - 1);
      Boundary b = Made.less(host, Made.box(-0.1, -0.4, 2 + e, 0.1, 0.2 + e, 3 + e));
      Boundary clean = Made.less(host, Made.box(-0.1, -0.4, 2 + e, 0.1, 0.2, 3));
      close(b.area(), clean.area(), "case " + i);
    }
  }
}
