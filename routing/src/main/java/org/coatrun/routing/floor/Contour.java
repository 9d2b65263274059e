package org.coatrun.routing.floor;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.shared.shape.Vec2;

/**
 * Lines along which a field given at the nodes of a square grid is zero.
 *
 * <p>Between nodes the field is taken as linear along the sides of the squares. A square with a
 * node that has no finite value is left out, so that lines end there.
 */
public final class Contour {

  private final Vec2 origin;
  private final double step;
  private final double[][] field;
  private final Map<Long, List<Long>> joined = new HashMap<>();
  private final List<Long> order = new ArrayList<>();

  private Contour(Vec2 origin, double step, double[][] field) {
    this.origin = origin;
    this.step = step;
    this.field = field;
  }

  /**
   * The lines, each of at least two points; closed ones repeat their first point.
   *
   * @param field by column, then by row; all columns as long
   */
  public static List<List<Vec2>> zero(Vec2 origin, double step, double[][] field) {
    Contour contour = new Contour(origin, step, field);
    for (int i = 0; i + 1 < field.length; i++) {
      for (int j = 0; j + 1 < field[i].length; j++) {
        contour.square(i, j);
      }
    }
    return contour.lines();
  }

  private void square(int i, int j) {
    double[] v = {field[i][j], field[i + 1][j], field[i + 1][j + 1], field[i][j + 1]};
    for (double value : v) {
      if (!Double.isFinite(value)) {
        return;
      }
    }
    long[] sides = {side(i, j, 0), side(i + 1, j, 1), side(i, j + 1, 0), side(i, j, 1)};
    var crossed = new ArrayList<Long>();
    for (int k = 0; k < 4; k++) {
      if (v[k] > 0 != v[(k + 1) % 4] > 0) {
        crossed.add(sides[k]);
      }
    }
    for (int k = 0; k + 1 < crossed.size(); k += 2) {
      join(crossed.get(k), crossed.get(k + 1));
      join(crossed.get(k + 1), crossed.get(k));
    }
  }

  /** A number for the side that goes from a node to the right, or up. */
  private long side(int i, int j, int up) {
    return 2L * ((long) i * (field[0].length + 1) + j) + up;
  }

  private void join(long a, long b) {
    if (!joined.containsKey(a)) {
      order.add(a);
    }
    joined.computeIfAbsent(a, k -> new ArrayList<>()).add(b);
  }

  private List<List<Vec2>> lines() {
    var lines = new ArrayList<List<Vec2>>();
    for (long start : order) {
      if (!joined.get(start).isEmpty()) {
        Deque<Vec2> line = new ArrayDeque<>();
        line.add(point(start));
        long end = follow(start, line, true);
        if (end != start) {
          follow(start, line, false);
        }
        lines.add(List.copyOf(line));
      }
    }
    return lines;
  }

  private long follow(long from, Deque<Vec2> line, boolean forward) {
    long at = from;
    while (!joined.get(at).isEmpty()) {
      long next = joined.get(at).remove(0);
      joined.get(next).remove(Long.valueOf(at));
      if (forward) {
        line.addLast(point(next));
      } else {
        line.addFirst(point(next));
      }
      at = next;
    }
    return at;
  }

  private Vec2 point(long side) {
    int rows = field[0].length + 1;
    int up = (int) (side % 2);
    int i = (int) (side / 2 / rows);
    int j = (int) (side / 2 % rows);
    double a = field[i][j];
    double b = up == 1 ? field[i][j + 1] : field[i + 1][j];
    double t = a / (a - b);
    return origin.plus(new Vec2((i + (1 - up) * t) * step, (j + up * t) * step));
  }
}
