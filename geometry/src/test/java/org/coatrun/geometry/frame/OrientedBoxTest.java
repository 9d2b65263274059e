package org.coatrun.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;

class OrientedBoxTest {

  private static OrientedBox box(Vec3 centre, double l, double w, double h) {
    return new OrientedBox(centre, Vec3.X, Vec3.Y, Vec3.Z, l / 2, w / 2, h / 2);
  }

  @Test
  void facesThatFaceEachOtherKeepTheirDistance() {
    assertThat(box(Vec3.ZERO, 2, 2, 2).gapTo(box(new Vec3(3.5, 0.2, 0), 2, 2, 2)))
        .isCloseTo(1.5, within(1e-12));
  }

  @Test
  void crossedBarsPassWithoutTouching() {
    OrientedBox a = box(Vec3.ZERO, 10, 0.1, 0.1);
    Vec3 d = new Vec3(1, 1, 0).unit();
    OrientedBox b =
        new OrientedBox(new Vec3(0, 0, 0.3), d, d.cross(Vec3.Z), Vec3.Z.times(-1), 5, 0.05, 0.05);
    assertThat(a.gapTo(b)).isCloseTo(0.2, within(1e-12));
  }

  /** Against points drawn at random: a point common to both boxes forbids a gap. */
  @Test
  void aGapIsNeverSeenWhereBoxesShareAPoint() {
    Random random = new Random(11);
    int shared = 0;
    for (int i = 0; i < 2_000; i++) {
      OrientedBox a = someBox(random);
      OrientedBox b = someBox(random);
      if (sharesPoint(a, b, random)) {
        shared++;
        assertThat(a.gapTo(b)).isLessThanOrEqualTo(1e-9);
      }
      assertThat(a.gapTo(b)).isCloseTo(b.gapTo(a), within(1e-9));
      assertThat(a.gapTo(b)).isLessThanOrEqualTo(a.centre().distance(b.centre()));
    }
    assertThat(shared).isGreaterThan(100);
  }

  private static OrientedBox someBox(Random r) {
    Transform3 f =
        Transform3.frame(
            new Vec3(3 * r.nextDouble(), 3 * r.nextDouble(), 3 * r.nextDouble()),
            new Vec3(r.nextGaussian(), r.nextGaussian(), r.nextGaussian()),
            new Vec3(r.nextGaussian(), r.nextGaussian(), r.nextGaussian()));
    return new OrientedBox(
        f.origin(), f.x(), f.y(), f.z(), r.nextDouble() * 2, r.nextDouble(), r.nextDouble());
  }

  private static boolean sharesPoint(OrientedBox a, OrientedBox b, Random r) {
    for (int i = 0; i < 50; i++) {
      Vec3 p =
          a.centre()
              .plus(a.along().times((2 * r.nextDouble() - 1) * a.halfLength()))
              .plus(a.across().times((2 * r.nextDouble() - 1) * a.halfWidth()))
              .plus(a.up().times((2 * r.nextDouble() - 1) * a.halfHeight()));
      Vec3 q = p.minus(b.centre());
      if (Math.abs(q.dot(b.along())) <= b.halfLength()
          && Math.abs(q.dot(b.across())) <= b.halfWidth()
          && Math.abs(q.dot(b.up())) <= b.halfHeight()) {
        return true;
      }
    }
    return false;
  }
}
