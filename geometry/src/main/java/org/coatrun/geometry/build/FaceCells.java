package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.solid.Ears;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/** Cuts an unrolled face along the lines of its surface into strips and triangles. */
final class FaceCells {

  private static final double SNAP = 1e-7;

  /**
   * A plane piece that stands for a part of the surface.
   *
   * @param corners on the surface, counter-clockwise seen from its own outside
   * @param area of what it stands for
   */
  record Cell(List<Vec3> corners, FaceArea area) {

    /** Of the plane piece, m². */
    double flatArea() {
      Vec3 sum = Vec3.ZERO;
      Vec3 o = corners.get(0);
      for (int i = 1; i + 1 < corners.size(); i++) {
        sum = sum.plus(corners.get(i).minus(o).cross(corners.get(i + 1).minus(o)));
      }
      return 0.5 * sum.length();
    }
  }

  private final CurvedFace face;
  private final List<Cell> cells = new ArrayList<>();

  FaceCells(CurvedFace face) {
    this.face = face;
  }

  /** All cells; their areas add up to the face's. */
  List<Cell> cells() {
    Geometry region = face.region();
    Envelope e = region.getEnvelopeInternal();
    List<Double> u = stops(face.map().linesAcrossU(e.getMinX(), e.getMaxX()), e, true);
    List<Double> v = stops(face.map().linesAcrossV(e.getMinY(), e.getMaxY()), e, false);
    for (int i = 1; i < u.size(); i++) {
      for (int j = 1; j < v.size(); j++) {
        add(common(region, new Envelope(u.get(i - 1), u.get(i), v.get(j - 1), v.get(j))));
      }
    }
    return face.map().unrolls() ? scaled(region) : cells;
  }

  /** The lines, and beyond them the ends of the region. */
  private static List<Double> stops(List<Double> lines, Envelope e, boolean alongU) {
    var out = new ArrayList<>(lines);
    double low = alongU ? e.getMinX() : e.getMinY();
    double high = alongU ? e.getMaxX() : e.getMaxY();
    out.removeIf(x -> x < low + SNAP || x > high - SNAP);
    out.add(0, low - SNAP);
    out.add(high + SNAP);
    return out;
  }

  private static Geometry common(Geometry region, Envelope box) {
    Geometry rectangle = region.getFactory().toGeometry(box);
    return OverlayNG.overlay(
        region, rectangle, OverlayNG.INTERSECTION, null, new SnappingNoder(SNAP));
  }

  private void add(Geometry part) {
    for (int i = 0; i < part.getNumGeometries(); i++) {
      if (part.getGeometryN(i) instanceof Polygon p && p.getArea() > SNAP * p.getLength()) {
        if (isStrip(p)) {
          strip(p);
        } else {
          triangles(p);
        }
      }
    }
  }

  /** Four corners of a surface that unrolls, two by two on lines: they lie in a plane. */
  private boolean isStrip(Polygon p) {
    Coordinate[] c = p.getCoordinates();
    if (!face.map().unrolls() || p.getNumInteriorRing() > 0 || c.length != 5) {
      return false;
    }
    boolean first = upright(c[0], c[1]) && upright(c[2], c[3]);
    return first || (upright(c[1], c[2]) && upright(c[3], c[4]));
  }

  private static boolean upright(Coordinate a, Coordinate b) {
    return Math.abs(a.x - b.x) < SNAP;
  }

  private void strip(Polygon p) {
    Coordinate[] c = onward(p.getCoordinates());
    FaceArea area =
        FaceArea.of(face.map(), c[0], c[1], c[2]).plus(FaceArea.of(face.map(), c[0], c[2], c[3]));
    cells.add(new Cell(List.of(face.at(c[0]), face.at(c[1]), face.at(c[2]), face.at(c[3])), area));
  }

  private void triangles(Polygon p) {
    Geometry parts = ConstrainedDelaunayTriangulator.triangulate(Ears.sound(p));
    for (int i = 0; i < parts.getNumGeometries(); i++) {
      Coordinate[] c = onward(parts.getGeometryN(i).getCoordinates());
      FaceArea area = FaceArea.of(face.map(), c[0], c[1], c[2]);
      cells.add(new Cell(List.of(face.at(c[0]), face.at(c[1]), face.at(c[2])), area));
    }
  }

  private static Coordinate[] onward(Coordinate[] ring) {
    double sum = 0;
    for (int i = 1; i + 1 < ring.length; i++) {
      sum +=
          (ring[i].x - ring[0].x) * (ring[i + 1].y - ring[0].y)
              - (ring[i].y - ring[0].y) * (ring[i + 1].x - ring[0].x);
    }
    if (sum >= 0) {
      return ring;
    }
    Coordinate[] back = new Coordinate[ring.length];
    for (int i = 0; i < ring.length; i++) {
      back[i] = ring[ring.length - 1 - i];
    }
    return back;
  }

  /** What chords along curved edges took or gave, spread over all cells. */
  private List<Cell> scaled(Geometry region) {
    double factor = face.trueArea() / region.getArea();
    return cells.stream()
        .map(
            c ->
                new Cell(
                    c.corners(), new FaceArea(c.area().area() * factor, c.area().flux() * factor)))
        .toList();
  }
}
