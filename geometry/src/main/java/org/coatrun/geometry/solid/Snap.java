package org.coatrun.geometry.solid;

import java.util.Arrays;

/**
 * Lays faces that almost lie in a plane of another solid exactly onto it, so that noise leaves no
 * films and slivers. Always whole faces: single vertices would warp tilted faces.
 */
final class Snap {

  private static final double PARALLEL = 0.999;
  private static final double EXACT = 1e-12;

  private Snap() {}

  /** The moved solid, or the same one where nothing is near. */
  static Solid onto(Solid moved, Solid target, double near) {
    double[] xyz = null;
    for (Face t : target.faces) {
      Plane plane = t.plane();
      for (Face f : moved.faces) {
        if (Math.abs(plane.dot(f.plane())) > PARALLEL
            && nearButOff(xyz == null ? moved.xyz : xyz, f, plane, near)) {
          xyz = xyz == null ? moved.xyz.clone() : xyz;
          lay(moved, xyz, f, plane);
        }
      }
    }
    return xyz == null ? moved : remade(moved, xyz);
  }

  private static boolean nearButOff(double[] xyz, Face f, Plane plane, double near) {
    double worst = 0;
    for (int[] ring : f.loops) {
      for (int v : ring) {
        double h = Math.abs(plane.height(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]));
        if (h > near) {
          return false;
        }
        worst = Math.max(worst, h);
      }
    }
    return worst > EXACT;
  }

  private static void lay(Solid solid, double[] xyz, Face f, Plane plane) {
    double[] from = xyz.clone();
    for (int[] ring : f.loops) {
      for (int v : ring) {
        slide(solid, from, xyz, f, v, plane);
      }
    }
  }

  /** Along the one edge that leaves the face, which keeps the other faces flat, or straight on. */
  private static void slide(Solid solid, double[] from, double[] to, Face f, int v, Plane plane) {
    double h = plane.height(from[3 * v], from[3 * v + 1], from[3 * v + 2]);
    int other = onlyNeighbour(solid, f, v);
    double dx = -plane.nx();
    double dy = -plane.ny();
    double dz = -plane.nz();
    double step = h;
    if (other >= 0) {
      double ex = from[3 * other] - from[3 * v];
      double ey = from[3 * other + 1] - from[3 * v + 1];
      double ez = from[3 * other + 2] - from[3 * v + 2];
      double along = plane.nx() * ex + plane.ny() * ey + plane.nz() * ez;
      double length = Math.sqrt(ex * ex + ey * ey + ez * ez);
      if (Math.abs(along) > 0.1 * length) {
        dx = ex;
        dy = ey;
        dz = ez;
        step = -h / along;
      }
    }
    to[3 * v] = from[3 * v] + step * dx;
    to[3 * v + 1] = from[3 * v + 1] + step * dy;
    to[3 * v + 2] = from[3 * v + 2] + step * dz;
  }

  private static int onlyNeighbour(Solid solid, Face f, int v) {
    int found = -1;
    for (Face g : solid.faces) {
      if (g == f || !mayHold(g, solid, v)) {
        continue;
      }
      for (int[] ring : g.loops) {
        for (int i = 0; i < ring.length; i++) {
          if (ring[i] == v) {
            int a = ring[(i + 1) % ring.length];
            int b = ring[(i + ring.length - 1) % ring.length];
            for (int w : new int[] {a, b}) {
              if (!holds(f, w)) {
                if (found >= 0 && found != w) {
                  return -1;
                }
                found = w;
              }
            }
          }
        }
      }
    }
    return found;
  }

  private static boolean mayHold(Face g, Solid solid, int v) {
    Box b = g.bounds();
    return solid.x(v) >= b.minX()
        && solid.x(v) <= b.maxX()
        && solid.y(v) >= b.minY()
        && solid.y(v) <= b.maxY()
        && solid.z(v) >= b.minZ()
        && solid.z(v) <= b.maxZ();
  }

  private static boolean holds(Face f, int v) {
    for (int[] ring : f.loops) {
      for (int w : ring) {
        if (w == v) {
          return true;
        }
      }
    }
    return false;
  }

  private static Solid remade(Solid old, double[] xyz) {
    Face[] out = new Face[old.faces.length];
    int n = 0;
    for (Face f : old.faces) {
      Face g = Solids.face(xyz, f.loops, f.label(), f.stretch());
      if (g != null) {
        out[n++] = g;
      }
    }
    return n == 0 ? old : Solids.finish(xyz, Arrays.copyOf(out, n));
  }
}
