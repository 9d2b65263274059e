package org.coatrun.geometry.solid;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Gives points that lie within a distance of each other one vertex number: the first that came.
 *
 * <p>Points on a grid of twice the distance; a point looks into its own cell and the nearest ones.
 */
public final class Welder {

  private record Cell(long x, long y, long z) {}

  private final SolidBuilder builder;
  private final double distance;
  private final Map<Cell, int[]> cells = new HashMap<>();
  private double[] xyz = new double[96];

  /** Welds into {@code builder} what lies within {@code distance} metres. */
  public Welder(SolidBuilder builder, double distance) {
    this.builder = builder;
    this.distance = distance;
  }

  /** The number of the vertex at, or within the distance of, a point. */
  public int vertex(double x, double y, double z) {
    double size = 2 * distance;
    long cx = (long) Math.floor(x / size);
    long cy = (long) Math.floor(y / size);
    long cz = (long) Math.floor(z / size);
    long sx = x / size - cx < 0.5 ? -1 : 1;
    long sy = y / size - cy < 0.5 ? -1 : 1;
    long sz = z / size - cz < 0.5 ? -1 : 1;
    for (int i = 0; i < 8; i++) {
      Cell cell =
          new Cell(
              cx + ((i & 1) == 0 ? 0 : sx),
              cy + ((i & 2) == 0 ? 0 : sy),
              cz + ((i & 4) == 0 ? 0 : sz));
      int found = near(cells.get(cell), x, y, z);
      if (found >= 0) {
        return found;
      }
    }
    return added(new Cell(cx, cy, cz), x, y, z);
  }

  private int near(int[] candidates, double x, double y, double z) {
    if (candidates == null) {
      return -1;
    }
    for (int v : candidates) {
      double dx = xyz[3 * v] - x;
      double dy = xyz[3 * v + 1] - y;
      double dz = xyz[3 * v + 2] - z;
      if (dx * dx + dy * dy + dz * dz <= distance * distance) {
        return v;
      }
    }
    return -1;
  }

  private int added(Cell cell, double x, double y, double z) {
    int v = builder.vertex(x, y, z);
    if (3 * v + 3 > xyz.length) {
      xyz = Arrays.copyOf(xyz, Math.max(2 * xyz.length, 3 * v + 3));
    }
    xyz[3 * v] = x;
    xyz[3 * v + 1] = y;
    xyz[3 * v + 2] = z;
    int[] old = cells.getOrDefault(cell, new int[0]);
    int[] grown = Arrays.copyOf(old, old.length + 1);
    grown[old.length] = v;
    cells.put(cell, grown);
    return v;
  }
}
