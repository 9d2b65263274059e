package org.coatrun.geometry.frame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.coatrun.shared.shape.Vec3;

/**
 * Which pieces may be near a box: a grid of cells in space, since an index over the plan alone
 * would return a tower's every floor.
 */
final class PieceIndex {

  private static final double CELL = 3.0;

  /** What would lie in more cells, as a faulty model may draw it, is looked at each time. */
  private static final double MOST_CELLS = 4096;

  private static final double FAR = 1e9;

  private final Map<Cell, List<Integer>> cells = new HashMap<>();
  private final List<Integer> large = new ArrayList<>();
  private final int[] seen;
  private int query;

  PieceIndex(List<FramePiece> pieces) {
    seen = new int[pieces.size()];
    for (int i = 0; i < pieces.size(); i++) {
      int piece = i;
      Cells of = Cells.of(pieces.get(i).box(), 0);
      if (of.areMany()) {
        large.add(piece);
      } else {
        of.forEach(c -> cells.computeIfAbsent(c, k -> new ArrayList<>()).add(piece));
      }
    }
  }

  /** Hands over each piece whose cells a box, grown by {@code margin}, touches; each once. */
  void forEachNear(OrientedBox box, double margin, IntConsumer action) {
    Cells of = Cells.of(box, margin);
    if (of.areMany()) {
      IntStream.range(0, seen.length).forEach(action);
      return;
    }
    query++;
    large.forEach(piece -> hand(piece, action));
    of.forEach(c -> cells.getOrDefault(c, List.of()).forEach(piece -> hand(piece, action)));
  }

  private void hand(int piece, IntConsumer action) {
    if (seen[piece] != query) {
      seen[piece] = query;
      action.accept(piece);
    }
  }

  /** The cells that a box may touch. */
  private record Cells(Span x, Span y, Span z) {

    static Cells of(OrientedBox box, double margin) {
      return new Cells(
          Span.of(box.centre().x(), box.reach(Vec3.X) + margin),
          Span.of(box.centre().y(), box.reach(Vec3.Y) + margin),
          Span.of(box.centre().z(), box.reach(Vec3.Z) + margin));
    }

    boolean areMany() {
      return !(x.count() * y.count() * z.count() <= MOST_CELLS);
    }

    void forEach(Consumer<Cell> action) {
      for (int i = (int) x.from; i <= x.to; i++) {
        for (int j = (int) y.from; j <= y.to; j++) {
          for (int k = (int) z.from; k <= z.to; k++) {
            action.accept(new Cell(i, j, k));
          }
        }
      }
    }
  }

  private record Cell(int x, int y, int z) {

    // Written out: see the conventions in DEVELOPERS.md.
    @Override
    public boolean equals(Object o) {
      return o instanceof Cell other && x == other.x && y == other.y && z == other.z;
    }

    @Override
    public int hashCode() {
      return 31 * (31 * x + y) + z;
    }
  }

  /** Numbers of cells along one axis, whole, but perhaps too large for an int or no numbers. */
  private record Span(double from, double to) {

    static Span of(double middle, double half) {
      return new Span(Math.floor((middle - half) / CELL), Math.floor((middle + half) / CELL));
    }

    /** Huge also where the box lies beyond what numbers of cells can tell apart. */
    double count() {
      return Math.abs(from) < FAR && Math.abs(to) < FAR ? to - from + 1 : FAR * FAR;
    }
  }
}
