package org.coatrun.ifcimport.shape;

import java.util.List;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Vec3;

/** Edges of loops: where they begin, and the piece of curve between their ends. */
final class Edges {

  private static final double AT_END = 1e-5;

  private final CurveReader curves;

  Edges(CurveReader curves) {
    this.curves = curves;
  }

  private static boolean forwards(Entity edge) {
    return !edge.isA("IfcOrientedEdge") || edge.flag("Orientation").orElse(true);
  }

  private static Entity plain(Entity edge) {
    return edge.isA("IfcOrientedEdge") ? edge.need("EdgeElement") : edge;
  }

  /** The vertex at which the loop enters the edge. */
  static Entity startVertex(Entity edge) {
    return plain(edge).need(forwards(edge) ? "EdgeStart" : "EdgeEnd");
  }

  /** Whether the edge is straight. */
  static boolean isStraight(Entity edge) {
    Entity plain = plain(edge);
    return plain.ref("EdgeGeometry").map(g -> g.isA("IfcLine")).orElse(true);
  }

  /** The edge as the loop runs along it. */
  List<Segment3> pieces(Entity edge) {
    Entity plain = plain(edge);
    Vec3 from = vertex(plain.need("EdgeStart"));
    Vec3 to = vertex(plain.need("EdgeEnd"));
    List<Segment3> along = along(plain, from, to);
    return forwards(edge) ? along : Pieces.reversed(along);
  }

  private Vec3 vertex(Entity vertex) {
    return curves.axes().point(vertex.need("VertexGeometry"));
  }

  private List<Segment3> along(Entity edge, Vec3 from, Vec3 to) {
    if (edge.ref("EdgeGeometry").isEmpty()) {
      return List.of(new Segment3.Line(from, to));
    }
    Entity geometry = edge.need("EdgeGeometry");
    while (geometry.isA("IfcSurfaceCurve")) {
      geometry = geometry.need("Curve3D");
    }
    if (geometry.isA("IfcLine")) {
      return List.of(new Segment3.Line(from, to));
    }
    boolean same = edge.flag("SameSense").orElse(true);
    if (geometry.isA("IfcConic")) {
      Segment3.Arc whole = curves.conic(geometry);
      return List.of(
          Arcs.part(whole, Arcs.parameter(whole, from), Arcs.parameter(whole, to), same));
    }
    return bounded(edge, curves.pieces(geometry), same, from, to);
  }

  /** A bounded curve, which must run from vertex to vertex as a whole. */
  private static List<Segment3> bounded(
      Entity edge, List<Segment3> pieces, boolean same, Vec3 from, Vec3 to) {
    List<Segment3> way = same ? pieces : Pieces.reversed(pieces);
    double reach = AT_END + 1e-3 * from.distance(to);
    if (Pieces.start(way.get(0)).distance(from) > reach
        || Pieces.end(way.get(way.size() - 1)).distance(to) > reach) {
      throw edge.broken("its curve does not run from vertex to vertex");
    }
    return way;
  }
}
