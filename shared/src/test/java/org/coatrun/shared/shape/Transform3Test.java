package org.coatrun.shared.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Maps of many points at once, and of directions, are the map of a point. */
class Transform3Test {

  private static final double SAME = 1e-10;

  private final Random random = new Random(7);

  private Vec3 vector() {
    return new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
  }

  @Test
  void aDirectionIsWhatLiesBetweenTwoPoints() {
    for (int round = 0; round < 100; round++) {
      Transform3 map = new Transform3(vector(), vector(), vector(), vector());
      Vec3 from = vector();
      Vec3 way = vector();

      Vec3 between = map.apply(from.plus(way)).minus(map.apply(from));

      assertThat(map.applyVector(way).distance(between)).isLessThan(SAME);
    }
  }
}
