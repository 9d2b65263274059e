package org.coatrun.geometry.section;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateFilter;
import org.locationtech.jts.geom.Geometry;

/**
 * Corner factors of coats, found once for all sections that look alike: members of one size under
 * one deck share theirs. May be used by several threads.
 *
 * <p>A section is seen in the axes of its first exposed piece and on a grid, and the factor is that
 * of the section on the grid, so that it does not depend on which member came first.
 */
public final class CoatFactors {

  /** No decimal fraction of a millimetre or an inch lies half way between two of these. */
  static final double GRID = Math.scalb(1.0, -23);

  private static final int MOST = 10_000;

  private final Map<Key, Double> known = new ConcurrentHashMap<>();

  private record Key(long[] places) {

    @Override
    public boolean equals(Object other) {
      return other instanceof Key key && Arrays.equals(places, key.places);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(places);
    }
  }

  /** k of the coat of thickness {@code t} about a section; zero where nothing is exposed. */
  double of(Trace trace, Geometry steel, double t) {
    if (trace.pieces().isEmpty()) {
      return 0;
    }
    Trace seen = seen(trace);
    Geometry body = steel.copy();
    Frame frame = new Frame(trace.pieces().get(0));
    body.apply((CoordinateFilter) c -> c.setCoordinate(frame.of(c)));
    body.geometryChanged();
    Key key = key(seen, body.getCoordinates());
    Double before = known.get(key);
    if (before != null) {
      return before;
    }
    double factor = CoatOutline.cornerFactor(seen, body, t);
    if (known.size() < MOST) {
      known.put(key, factor);
    }
    return factor;
  }

  private static Trace seen(Trace trace) {
    Frame frame = new Frame(trace.pieces().get(0));
    return new Trace(
        trace.pieces().stream()
            .map(p -> Trace.Piece.of(frame.of(p.from()), frame.of(p.to()), p.stretch()))
            .filter(p -> p.length() > 0)
            .toList());
  }

  private static Key key(Trace trace, Coordinate[] body) {
    long[] places = new long[4 * trace.pieces().size() + 2 * body.length];
    int n = 0;
    for (Trace.Piece p : trace.pieces()) {
      n = put(places, n, p.from());
      n = put(places, n, p.to());
    }
    for (Coordinate c : body) {
      n = put(places, n, c);
    }
    return new Key(places);
  }

  private static int put(long[] places, int n, Coordinate c) {
    places[n] = Math.round(c.x / GRID);
    places[n + 1] = Math.round(c.y / GRID);
    return n + 2;
  }

  /** Axes from where a piece starts, along it. */
  private static final class Frame {
    private final Coordinate origin;
    private final double cos;
    private final double sin;

    private Frame(Trace.Piece piece) {
      origin = piece.from();
      cos = piece.du();
      sin = piece.dv();
    }

    private Coordinate of(Coordinate c) {
      double u = c.x - origin.x;
      double v = c.y - origin.y;
      return new Coordinate(onGrid(u * cos + v * sin), onGrid(v * cos - u * sin));
    }

    private static double onGrid(double value) {
      return GRID * Math.round(value / GRID);
    }
  }
}
