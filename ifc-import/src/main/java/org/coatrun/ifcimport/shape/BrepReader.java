package org.coatrun.ifcimport.shape;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.shape.Curve3;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Surface;

/** Breps and surface models: plane ones become meshes, curved ones stay exact. */
final class BrepReader {

  private final CurveReader curves;
  private final SurfaceReader surfaces;
  private final Edges edges;

  BrepReader(CurveReader curves) {
    this.curves = curves;
    this.surfaces = new SurfaceReader(curves);
    this.edges = new Edges(curves);
  }

  /** The outer shell less the voids. */
  Shape brep(Entity brep) {
    Shape whole = shell(brep.need("Outer"), true);
    for (Entity hollow : brep.refs("Voids")) {
      whole = new Shape.Combination(Shape.Operator.DIFFERENCE, whole, shell(hollow, true));
    }
    return whole;
  }

  /** Several shells, each as one shape; only a closed shell encloses something. */
  Shape shells(List<Entity> shells) {
    var all = new ArrayList<Shape>();
    for (Entity shell : shells) {
      all.add(shell(shell, shell.isA("IfcClosedShell")));
    }
    return all.size() == 1 ? all.get(0) : new Shape.Compound(all);
  }

  private Shape shell(Entity shell, boolean closed) {
    List<Entity> faces = shell.needRefs("CfsFaces");
    if (faces.stream().anyMatch(BrepReader::isCurved)) {
      return new Shape.Brep(faces.stream().map(this::face).toList());
    }
    var mesh = new MeshBuilder(curves.axes());
    mesh.addShell(shell);
    return mesh.build(closed, shell);
  }

  private static boolean isCurved(Entity face) {
    if (!face.isA("IfcFaceSurface")) {
      return false;
    }
    if (!face.need("FaceSurface").isA("IfcPlane")) {
      return true;
    }
    return face.refs("Bounds").stream()
        .map(b -> b.need("Bound"))
        .filter(loop -> loop.isA("IfcEdgeLoop"))
        .flatMap(loop -> loop.refs("EdgeList").stream())
        .anyMatch(edge -> !Edges.isStraight(edge));
  }

  private Shape.BrepFace face(Entity face) {
    if (!face.isA("IfcFaceSurface")) {
      throw face.broken("a face without a surface among curved ones is not handled");
    }
    Surface surface = surfaces.surface(face.need("FaceSurface"));
    var bounds = new ArrayList<Curve3>();
    for (Entity bound : face.needRefs("Bounds")) {
      Entity loop = bound.need("Bound");
      if (loop.isA("IfcVertexLoop")) {
        continue;
      }
      Curve3 ring = ring(bound, loop);
      bounds.add(bound.isA("IfcFaceOuterBound") ? 0 : bounds.size(), ring);
    }
    return new Shape.BrepFace(surface, face.flag("SameSense").orElse(true), bounds);
  }

  private Curve3 ring(Entity bound, Entity loop) {
    var pieces = new ArrayList<Segment3>();
    if (loop.isA("IfcPolyLoop")) {
      pieces.addAll(
          Pieces.lines(loop.needRefs("Polygon").stream().map(curves.axes()::point).toList()));
    } else {
      for (Entity edge : loop.needRefs("EdgeList")) {
        pieces.addAll(edges.pieces(edge));
      }
    }
    List<Segment3> way = bound.flag("Orientation").orElse(true) ? pieces : Pieces.reversed(pieces);
    return Pieces.closed(way, loop);
  }
}
