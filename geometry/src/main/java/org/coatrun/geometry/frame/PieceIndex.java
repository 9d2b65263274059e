package org.coatrun.geometry.frame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import org.coatrun.shared.shape.Vec3;

/**
 * Which pieces may be near a box: a grid of cells in space, since an index over the plan alone
 * would return a tower's every floor.
 */
final class PieceIndex {

  private static final double CELL = 3.0;

  private final Map<Cell, List<Integer>> cells = new HashMap<>();
  private final int[] seen;
  private int query;

  PieceIndex(List<FramePiece> pieces) {
    seen = new int[pieces.size()];
    for (int i = 0; i < pieces.size(); i++) {
      int piece = i;
      forEachCell(
          pieces.get(i).box(), 0, c -> cells.computeIfAbsent(c, k -> new ArrayList<>()).add(piece));
    }
  }

  /** Hands over each piece whose cells a box, grown by {@code margin}, touches; each once. */
  void forEachNear(OrientedBox box, double margin, IntConsumer action) {
    query++;
    forEachCell(
        box,
        margin,
        c -> {
          for (int piece : cells.getOrDefault(c, List.of())) {
            if (seen[piece] != query) {
              seen[piece] = query;
              action.accept(piece);
            }
          }
        });
  }

  private static void forEachCell(OrientedBox box, double margin, Consumer<Cell> action) {
    Span x = Span.of(box.centre().x(), box.reach(Vec3.X) + margin);
    Span y = Span.of(box.centre().y(), box.reach(Vec3.Y) + margin);
    Span z = Span.of(box.centre().z(), box.reach(Vec3.Z) + margin);
    for (int i = x.from; i <= x.to; i++) {
      for (int j = y.from; j <= y.to; j++) {
        for (int k = z.from; k <= z.to; k++) {
          action.accept(new Cell(i, j, k));
        }
      }
    }
  }

  private record Cell(int x, int y, int z) {}

  private record Span(int from, int to) {
    static Span of(double middle, double half) {
      return new Span(
          (int) Math.floor((middle - half) / CELL), (int) Math.floor((middle + half) / CELL));
    }
  }
}
