package org.coatrun.geometry.solid;

import java.util.Arrays;

/**
 * Where the faces of a solid cross a plane, just behind it or just in front of it.
 *
 * <p>"Just" is a sign, not a distance: a vertex on the plane counts as in front when the slice is
 * asked for just behind, and as behind when it is asked for just in front. An edge crosses only
 * where the signs of its ends differ, so a face in the plane yields nothing and needs no special
 * case. Reused scratch tables: one object per thread.
 */
final class Crossings {

  private double[] height = new double[256];
  private boolean[] front = new boolean[256];
  private double[] cut = new double[64];
  private final Segments out;
  private double tolerance;

  Crossings(Segments out) {
    this.out = out;
  }

  /**
   * Fills the segments.
   *
   * @param side -1 just behind the plane, +1 just in front
   * @return false where the solid does not cross the plane
   */
  boolean collect(Solid solid, Plane plane, int side, double tolerance) {
    this.tolerance = tolerance;
    out.clear();
    if (!straddles(solid.bounds(), plane)) {
      return false;
    }
    if (!measure(solid, plane, side)) {
      return false;
    }
    Face[] faces = solid.faces;
    for (int i = 0; i < faces.length; i++) {
      cross(solid.xyz, faces[i], i, plane);
    }
    return out.size > 0;
  }

  private boolean straddles(Box box, Plane plane) {
    double centre = plane.height(box.centreX(), box.centreY(), box.centreZ());
    double reach =
        0.5
            * (Math.abs(plane.nx()) * (box.maxX() - box.minX())
                + Math.abs(plane.ny()) * (box.maxY() - box.minY())
                + Math.abs(plane.nz()) * (box.maxZ() - box.minZ()));
    return Math.abs(centre) <= reach + 2 * tolerance;
  }

  private boolean measure(Solid solid, Plane plane, int side) {
    double[] xyz = solid.xyz;
    int n = xyz.length / 3;
    if (n > height.length) {
      height = new double[2 * n];
      front = new boolean[2 * n];
    }
    // just behind: what lies on the plane is in front of the slice; just in front: behind it
    double level = side < 0 ? -tolerance : tolerance;
    boolean some = false;
    boolean others = false;
    for (int v = 0; v < n; v++) {
      double h = plane.height(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
      boolean f = side < 0 ? h >= level : h > level;
      height[v] = h;
      front[v] = f;
      some |= f;
      others |= !f;
    }
    return some && others;
  }

  private void cross(double[] xyz, Face face, int number, Plane plane) {
    int n = 0;
    for (int[] ring : face.loops) {
      int last = ring[ring.length - 1];
      boolean was = front[last];
      for (int v : ring) {
        boolean is = front[v];
        if (is != was) {
          n = point(xyz, last, v, is, plane, n);
        }
        was = is;
        last = v;
      }
    }
    if (n == 2) {
      pair(number);
    } else if (n > 2) {
      sortAndPair(face, number, plane, n);
    }
  }

  /** Each crossing: u, v, and +1 where the ring goes up through the plane, -1 where down. */
  private int point(double[] xyz, int a, int b, boolean up, Plane plane, int n) {
    if (4 * n + 4 > cut.length) {
      cut = Arrays.copyOf(cut, 2 * cut.length);
    }
    int lo = Math.min(a, b);
    int hi = Math.max(a, b);
    double hl = height[lo];
    double hh = height[hi];
    double x;
    double y;
    double z;
    // both ends may be within the tolerance by different signs: then the nearer one is the point
    if (Math.abs(hl) <= tolerance && Math.abs(hl) <= Math.abs(hh)) {
      x = xyz[3 * lo];
      y = xyz[3 * lo + 1];
      z = xyz[3 * lo + 2];
    } else if (Math.abs(hh) <= tolerance) {
      x = xyz[3 * hi];
      y = xyz[3 * hi + 1];
      z = xyz[3 * hi + 2];
    } else {
      // always from the lower to the higher number: both faces at the edge get the same point
      double t = hl / (hl - hh);
      x = xyz[3 * lo] + t * (xyz[3 * hi] - xyz[3 * lo]);
      y = xyz[3 * lo + 1] + t * (xyz[3 * hi + 1] - xyz[3 * lo + 1]);
      z = xyz[3 * lo + 2] + t * (xyz[3 * hi + 2] - xyz[3 * lo + 2]);
    }
    cut[4 * n] = plane.u(x, y, z);
    cut[4 * n + 1] = plane.v(x, y, z);
    cut[4 * n + 2] = up ? 1 : -1;
    return n + 1;
  }

  private void pair(int number) {
    int from = cut[2] < 0 ? 0 : 4;
    int to = 4 - from;
    out.add(cut[from], cut[from + 1], cut[to], cut[to + 1], number);
  }

  /** Along (plane normal × face normal) the inside begins at a way down and ends at a way up. */
  private void sortAndPair(Face face, int number, Plane plane, int n) {
    Plane f = face.plane();
    double tx = plane.ny() * f.nz() - plane.nz() * f.ny();
    double ty = plane.nz() * f.nx() - plane.nx() * f.nz();
    double tz = plane.nx() * f.ny() - plane.ny() * f.nx();
    double tu = plane.ux() * tx + plane.uy() * ty + plane.uz() * tz;
    double tv = plane.vx() * tx + plane.vy() * ty + plane.vz() * tz;
    for (int i = 0; i < n; i++) {
      cut[4 * i + 3] = tu * cut[4 * i] + tv * cut[4 * i + 1];
    }
    for (int i = 1; i < n; i++) {
      for (int j = i; j > 0 && before(j, j - 1); j--) {
        swap(j, j - 1);
      }
    }
    for (int i = 0; i + 1 < n; i += 2) {
      int a = 4 * i;
      int b = a + 4;
      out.add(cut[a], cut[a + 1], cut[b], cut[b + 1], number);
    }
  }

  private boolean before(int i, int j) {
    double di = cut[4 * i + 3];
    double dj = cut[4 * j + 3];
    return di < dj || (di == dj && cut[4 * i + 2] < cut[4 * j + 2]);
  }

  private void swap(int i, int j) {
    for (int k = 0; k < 4; k++) {
      double keep = cut[4 * i + k];
      cut[4 * i + k] = cut[4 * j + k];
      cut[4 * j + k] = keep;
    }
  }
}
