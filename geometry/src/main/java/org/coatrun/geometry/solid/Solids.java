package org.coatrun.geometry.solid;

import java.util.Arrays;

/** Measures faces and closes solids; shared by builder and mappings. */
final class Solids {

  private Solids() {}

  /** A face with its plane, or null where it has no area. */
  static Face face(double[] xyz, int[][] loops, FaceLabel label, double stretch) {
    double[] sum = new double[3];
    double extent = 0;
    for (int[] ring : loops) {
      extent = Math.max(extent, addVectorArea(xyz, ring, sum));
    }
    double length = Math.sqrt(sum[0] * sum[0] + sum[1] * sum[1] + sum[2] * sum[2]);
    if (!(length > 1e-14 * extent) || length == 0) {
      return null;
    }
    double[] c = centre(xyz, loops[0]);
    Plane plane = Plane.through(c[0], c[1], c[2], sum[0], sum[1], sum[2]);
    return new Face(loops, plane, label, stretch, 0.5 * length, bounds(xyz, loops[0]));
  }

  private static double addVectorArea(double[] xyz, int[] ring, double[] sum) {
    double ox = xyz[3 * ring[0]];
    double oy = xyz[3 * ring[0] + 1];
    double oz = xyz[3 * ring[0] + 2];
    double extent = 0;
    double ax = 0;
    double ay = 0;
    double az = 0;
    for (int i = 1; i < ring.length; i++) {
      double bx = xyz[3 * ring[i]] - ox;
      double by = xyz[3 * ring[i] + 1] - oy;
      double bz = xyz[3 * ring[i] + 2] - oz;
      sum[0] += ay * bz - az * by;
      sum[1] += az * bx - ax * bz;
      sum[2] += ax * by - ay * bx;
      extent = Math.max(extent, bx * bx + by * by + bz * bz);
      ax = bx;
      ay = by;
      az = bz;
    }
    return extent;
  }

  private static double[] centre(double[] xyz, int[] ring) {
    double[] c = new double[3];
    for (int v : ring) {
      c[0] += xyz[3 * v];
      c[1] += xyz[3 * v + 1];
      c[2] += xyz[3 * v + 2];
    }
    c[0] /= ring.length;
    c[1] /= ring.length;
    c[2] /= ring.length;
    return c;
  }

  private static Box bounds(double[] xyz, int[] ring) {
    double[] lo = {1e300, 1e300, 1e300};
    double[] hi = {-1e300, -1e300, -1e300};
    for (int v : ring) {
      for (int k = 0; k < 3; k++) {
        lo[k] = Math.min(lo[k], xyz[3 * v + k]);
        hi[k] = Math.max(hi[k], xyz[3 * v + k]);
      }
    }
    return new Box(lo[0], lo[1], lo[2], hi[0], hi[1], hi[2]);
  }

  /** Largest distance of a vertex from the face's plane. */
  static double bend(double[] xyz, Face face) {
    double worst = 0;
    Plane p = face.plane();
    for (int[] ring : face.loops) {
      if (ring.length == 3 && face.loops.length == 1) {
        return 0;
      }
      for (int v : ring) {
        worst = Math.max(worst, Math.abs(p.height(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2])));
      }
    }
    return worst;
  }

  /**
   * The solid of checked faces: finds whether it is closed, and turns it where it is inside out.
   */
  static Solid finish(double[] xyz, Face[] faces) {
    Box box = Box.EMPTY;
    for (Face f : faces) {
      box = box.plus(f.bounds());
    }
    boolean closed = isClosed(faces);
    double volume = volume(faces, box);
    if (closed && volume < 0) {
      Face[] turned = new Face[faces.length];
      for (int i = 0; i < faces.length; i++) {
        turned[i] = turned(faces[i]);
      }
      return new Solid(xyz, turned, true, box, -volume);
    }
    return new Solid(xyz, faces, closed, box, volume);
  }

  /** The same face seen from the other side. */
  static Face turned(Face f) {
    int[][] loops = new int[f.loops.length][];
    for (int i = 0; i < loops.length; i++) {
      loops[i] = backwards(f.loops[i]);
    }
    return new Face(loops, f.plane().reversed(), f.label(), f.stretch(), f.flatArea(), f.bounds());
  }

  static int[] backwards(int[] ring) {
    int[] out = new int[ring.length];
    for (int i = 0; i < ring.length; i++) {
      out[i] = ring[ring.length - 1 - i];
    }
    return out;
  }

  private static double volume(Face[] faces, Box box) {
    double sum = 0;
    for (Face f : faces) {
      sum -= f.flatArea() * f.plane().height(box.centreX(), box.centreY(), box.centreZ());
    }
    return sum / 3;
  }

  private static boolean isClosed(Face[] faces) {
    int n = 0;
    for (Face f : faces) {
      for (int[] ring : f.loops) {
        n += ring.length;
      }
    }
    long[] forth = new long[n];
    long[] back = new long[n];
    int k = 0;
    for (Face f : faces) {
      for (int[] ring : f.loops) {
        for (int i = 0; i < ring.length; i++) {
          long a = ring[i];
          long b = ring[i + 1 == ring.length ? 0 : i + 1];
          forth[k] = a << 32 | b;
          back[k++] = b << 32 | a;
        }
      }
    }
    Arrays.sort(forth);
    Arrays.sort(back);
    return Arrays.equals(forth, back);
  }
}
