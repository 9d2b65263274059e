package org.coatrun.geometry.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coatrun.shared.shape.Transform3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Boxes on a lattice, so that faces coincide most of the time, against counting the lattice's
 * cells: an exact answer that shares nothing with the kernel.
 */
class LatticeCutTest {

  private static final int N = 6;
  private static final double CELL = 0.13;

  private static boolean[][][] cells(int[] b) {
    boolean[][][] in = new boolean[N][N][N];
    for (int x = b[0]; x < b[3]; x++) {
      for (int y = b[1]; y < b[4]; y++) {
        for (int z = b[2]; z < b[5]; z++) {
          in[x][y][z] = true;
        }
      }
    }
    return in;
  }

  private static int[] randomBox(Random r) {
    int[] b = new int[6];
    for (int k = 0; k < 3; k++) {
      int p = r.nextInt(N + 1);
      int q = r.nextInt(N + 1);
      while (p == q) {
        q = r.nextInt(N + 1);
      }
      b[k] = Math.min(p, q);
      b[k + 3] = Math.max(p, q);
    }
    return b;
  }

  private static Solid solid(int[] b, Transform3 by) {
    return Made.box(b[0] * CELL, b[1] * CELL, b[2] * CELL, b[3] * CELL, b[4] * CELL, b[5] * CELL)
        .mapped(by);
  }

  private static double[] measured(boolean[][][] in) {
    int volume = 0;
    int area = 0;
    for (int x = -1; x < N; x++) {
      for (int y = -1; y < N; y++) {
        for (int z = -1; z < N; z++) {
          boolean here = at(in, x, y, z);
          volume += here ? 1 : 0;
          area += here != at(in, x + 1, y, z) ? 1 : 0;
          area += here != at(in, x, y + 1, z) ? 1 : 0;
          area += here != at(in, x, y, z + 1) ? 1 : 0;
        }
      }
    }
    return new double[] {volume * CELL * CELL * CELL, area * CELL * CELL};
  }

  private static boolean at(boolean[][][] in, int x, int y, int z) {
    return x >= 0 && y >= 0 && z >= 0 && x < N && y < N && z < N && in[x][y][z];
  }

  private static void check(Boundary b, double[] want, String what) {
    assertThat(b.volume()).as(what).isCloseTo(want[0], within(1e-9 * (want[0] + CELL)));
    assertThat(b.area()).as(what).isCloseTo(want[1], within(1e-9 * (want[1] + CELL)));
    assertThat(b.gape()).as(what).isLessThan(1e-9);
  }

  private interface Cells {
    boolean at(boolean a, boolean b);
  }

  private static boolean[][][] joined(boolean[][][] a, boolean[][][] b, Cells how) {
    boolean[][][] out = new boolean[N][N][N];
    for (int x = 0; x < N; x++) {
      for (int y = 0; y < N; y++) {
        for (int z = 0; z < N; z++) {
          out[x][y][z] = how.at(a[x][y][z], b[x][y][z]);
        }
      }
    }
    return out;
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void twoBoxesMadeOneInEachWay(boolean turned) {
    Random random = new Random(11);
    for (int i = 0; i < 400; i++) {
      int[] a = randomBox(random);
      int[] b = randomBox(random);
      Transform3 by = turned ? Made.rigid(random) : Transform3.IDENTITY;
      Solid sa = solid(a, by);
      Solid sb = solid(b, by);
      String what = "case " + i;
      check(
          Made.less(sa, sb),
          measured(joined(cells(a), cells(b), (p, q) -> p && !q)),
          what + " less");
      check(
          Made.union(sa, sb), measured(joined(cells(a), cells(b), (p, q) -> p || q)), what + " or");
      check(
          Made.common(sa, sb),
          measured(joined(cells(a), cells(b), (p, q) -> p && q)),
          what + " and");
    }
  }

  @Test
  void manyCutters() {
    Random random = new Random(12);
    for (int n : new int[] {2, 3, 5, 10, 39}) {
      for (int i = 0; i < 12; i++) {
        Transform3 by = Made.rigid(random);
        boolean[][][] left = cells(new int[] {0, 0, 0, N, N, N});
        List<Solid> cutters = new ArrayList<>();
        for (int k = 0; k < n; k++) {
          int[] b = randomBox(random);
          b[3] = Math.min(b[3], b[0] + 2);
          b[4] = Math.min(b[4], b[1] + 2);
          b[5] = Math.min(b[5], b[2] + 2);
          left = joined(left, cells(b), (p, q) -> p && !q);
          cutters.add(solid(b, by));
        }
        Solid host = solid(new int[] {0, 0, 0, N, N, N}, by);
        check(Made.less(host, cutters.toArray(new Solid[0])), measured(left), n + " cutters, " + i);
      }
    }
  }

  private record Pair(SolidTree tree, boolean[][][] in) {}

  private static Pair grown(Random random, int depth, Transform3 by) {
    if (depth == 0) {
      int[] b = randomBox(random);
      return new Pair(SolidTree.of(solid(b, by)), cells(b));
    }
    Pair a = grown(random, depth - 1, by);
    Pair b = grown(random, random.nextInt(depth), by);
    return switch (random.nextInt(3)) {
      case 0 -> new Pair(SolidTree.less(a.tree, b.tree), joined(a.in, b.in, (p, q) -> p && !q));
      case 1 ->
          new Pair(
              new SolidTree.Union(List.of(a.tree, b.tree)), joined(a.in, b.in, (p, q) -> p || q));
      default ->
          new Pair(
              new SolidTree.Intersection(List.of(a.tree, b.tree)),
              joined(a.in, b.in, (p, q) -> p && q));
    };
  }

  @Test
  void treesOfAnyDepth() {
    Random random = new Random(13);
    for (int i = 0; i < 300; i++) {
      Pair pair = grown(random, 1 + random.nextInt(4), Made.rigid(random));
      check(Made.boundary(pair.tree), measured(pair.in), "tree " + i);
    }
  }
}
