package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** A curved face of an exact brep, unrolled. */
final class CurvedFace {

  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double ON_LINE = 1e-8;
  private static final int DENSE = 128;

  private final FaceMap map;
  private final List<List<BrepEdges.Use>> loops;

  CurvedFace(FaceMap map, List<List<BrepEdges.Use>> loops) {
    this.map = map;
    this.loops = loops;
  }

  FaceMap map() {
    return map;
  }

  /** Cuts the face's edges where lines of the surface cross them. */
  void cutEdges() {
    for (List<BrepEdges.Use> loop : loops) {
      double[] near = null;
      for (BrepEdges.Use use : loop) {
        List<Double> places = new ArrayList<>(use.places());
        places.add(1.0);
        double[] here = map.of(use.at(0), near);
        for (int i = 1; i < places.size(); i++) {
          double[] next = map.of(use.at(places.get(i)), here);
          cut(use, places.get(i - 1), places.get(i), here, next);
          here = next;
        }
        near = here;
      }
    }
  }

  private void cut(BrepEdges.Use use, double from, double to, double[] a, double[] b) {
    for (int k = 0; k < 2; k++) {
      double low = Math.min(a[k], b[k]);
      double high = Math.max(a[k], b[k]);
      List<Double> lines = k == 0 ? map.linesAcrossU(low, high) : map.linesAcrossV(low, high);
      for (double line : lines) {
        if (line - low > ON_LINE && high - line > ON_LINE) {
          use.cut(crossing(use, new double[] {from, to}, a, k, line));
        }
      }
    }
  }

  /** Where between two places an edge crosses a line, by halving. */
  private double crossing(BrepEdges.Use use, double[] span, double[] a, int k, double line) {
    double low = span[0];
    double high = span[1];
    boolean up = a[k] < line;
    double[] near = a;
    for (int i = 0; i < 60 && high - low > 1e-15; i++) {
      double middle = 0.5 * (low + high);
      near = map.of(use.at(middle), near);
      if (near[k] < line == up) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  /** The face in u and v, its corners where its edges are cut. */
  Geometry region() {
    return region(BrepEdges.Use::places);
  }

  /** Area in u and v between the true edges, by Richardson's rule on two fine divisions. */
  double trueArea() {
    double coarse = region(u -> even(DENSE)).getArea();
    double fine = region(u -> even(2 * DENSE)).getArea();
    return fine + (fine - coarse) / 3;
  }

  private static List<Double> even(int n) {
    var out = new ArrayList<Double>();
    for (int i = 0; i < n; i++) {
      out.add((double) i / n);
    }
    return out;
  }

  private Geometry region(Function<BrepEdges.Use, List<Double>> places) {
    List<List<double[]>> closed = new ArrayList<>();
    List<List<double[]>> round = new ArrayList<>();
    for (List<BrepEdges.Use> loop : loops) {
      List<double[]> points = unrolled(loop, places);
      double[] first = points.get(0);
      double[] last = points.get(points.size() - 1);
      boolean turns = map.period() > 0 && Math.abs(last[0] - first[0]) > 0.5 * map.period();
      (turns ? round : closed).add(points);
    }
    if (round.size() == 2) {
      closed.add(0, between(round.get(0), round.get(1)));
    } else if (!round.isEmpty() || closed.isEmpty()) {
      throw new NotBuildableException(
          SurfaceFinding.NOT_MEASURED, "exact brep", "The edges of a curved face do not close it.");
    }
    return less(closed, !round.isEmpty());
  }

  private List<double[]> unrolled(
      List<BrepEdges.Use> loop, Function<BrepEdges.Use, List<Double>> places) {
    var out = new ArrayList<double[]>();
    double[] near = null;
    for (BrepEdges.Use use : loop) {
      for (double t : places.apply(use)) {
        near = map.of(use.at(t), near);
        out.add(near);
      }
    }
    out.add(map.of(loop.get(0).at(0), near));
    return out;
  }

  /** The band between two edges that run all the way round, opened where u is zero. */
  private List<double[]> between(List<double[]> a, List<double[]> b) {
    var ring = new ArrayList<>(fromZero(a));
    List<double[]> back = fromZero(b);
    for (int i = back.size() - 1; i >= 0; i--) {
      ring.add(back.get(i));
    }
    ring.add(ring.get(0));
    return ring;
  }

  private List<double[]> fromZero(List<double[]> given) {
    double period = map.period();
    var out = new ArrayList<double[]>();
    for (double[] p : given.subList(0, given.size() - 1)) {
      double u = p[0] - period * Math.floor((p[0] + ON_LINE) / period);
      out.add(new double[] {Math.max(0, u), p[1]});
    }
    out.sort(Comparator.comparingDouble(p -> p[0]));
    double seam = out.get(0)[0] < ON_LINE ? out.get(0)[1] : seam(out);
    if (out.get(0)[0] >= ON_LINE) {
      out.add(0, new double[] {0, seam});
    }
    out.add(new double[] {period, seam});
    return out;
  }

  private double seam(List<double[]> sorted) {
    double[] first = sorted.get(0);
    double[] last = sorted.get(sorted.size() - 1);
    double gap = map.period() - last[0];
    return last[1] + (first[1] - last[1]) * gap / (gap + first[0]);
  }

  private Geometry less(List<List<double[]>> rings, boolean band) {
    List<Polygon> all = new ArrayList<>(rings.stream().map(CurvedFace::polygon).toList());
    int outer = 0;
    for (int i = 1; i < all.size() && !band; i++) {
      outer = all.get(i).getArea() > all.get(outer).getArea() ? i : outer;
    }
    Geometry region = all.remove(outer);
    for (Polygon hole : all) {
      for (int k = -1; k <= 1; k++) {
        if (k == 0 || map.period() > 0) {
          region = region.difference(moved(hole, k * map.period()));
        }
      }
    }
    if (!(region.getArea() > 0)) {
      throw NotBuildableException.empty("curved face");
    }
    return region;
  }

  private static Polygon polygon(List<double[]> points) {
    Coordinate[] c = new Coordinate[points.size()];
    for (int i = 0; i < c.length; i++) {
      c[i] = new Coordinate(points.get(i)[0], points.get(i)[1]);
    }
    c[c.length - 1] = c[0].copy();
    return FACTORY.createPolygon(c);
  }

  private static Geometry moved(Polygon p, double by) {
    Coordinate[] c = p.getExteriorRing().getCoordinates();
    for (int i = 0; i < c.length; i++) {
      c[i] = new Coordinate(c[i].x + by, c[i].y);
    }
    return FACTORY.createPolygon(c);
  }

  /** A point of the surface. */
  Vec3 at(Coordinate c) {
    return map.at(c.x, c.y);
  }
}
