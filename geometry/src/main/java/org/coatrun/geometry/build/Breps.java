package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.geometry.profile.Ring;
import org.coatrun.geometry.solid.FaceLabel;
import org.coatrun.geometry.solid.Solid;
import org.coatrun.geometry.solid.SolidBuilder;
import org.coatrun.geometry.solid.Welder;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Surface;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/**
 * Solids of exact breps: plane faces with their exact area, cylinders in strips of their true arc,
 * B-spline surfaces in small facets whose area is integrated. Neighbours share the points of their
 * common edge.
 */
final class Breps {

  private static final double SAME_POINT = 1e-6;

  private final Transform3 at;
  private final SolidBuilder builder = new SolidBuilder();
  private final Welder welder = new Welder(builder, SAME_POINT);
  private double flux;

  private Breps(Transform3 at) {
    this.at = at;
  }

  static BuildResult.Built build(Shape.Brep brep, Transform3 at) {
    return new Breps(at).build(brep);
  }

  private BuildResult.Built build(Shape.Brep brep) {
    var edges = new BrepEdges();
    var loops = new ArrayList<List<List<BrepEdges.Use>>>();
    var curved = new ArrayList<Optional<CurvedFace>>();
    for (Shape.BrepFace face : brep.faces()) {
      List<List<BrepEdges.Use>> own =
          face.bounds().stream().map(edges::uses).filter(l -> !l.isEmpty()).toList();
      loops.add(own);
      curved.add(curved(face, own));
    }
    curved.forEach(c -> c.ifPresent(CurvedFace::cutEdges));
    for (int i = 0; i < loops.size(); i++) {
      Shape.BrepFace face = brep.faces().get(i);
      if (curved.get(i).isPresent()) {
        strips(curved.get(i).get(), face.sameSense());
      } else if (!loops.get(i).isEmpty()) {
        plane((Surface.Plane) face.surface(), face, loops.get(i));
      }
    }
    return result();
  }

  private BuildResult.Built result() {
    Solid solid = builder.build();
    double volume = Math.abs(flux) / 3 * Math.abs(at.determinant());
    boolean measured = solid.closed() && solid.volume() > 0 && volume > 0;
    List<BuildResult.Note> notes = solid.closed() ? List.of() : List.of(Meshes.OPEN);
    double fullness = measured ? volume / solid.volume() : 1;
    return new BuildResult.Built(List.of(Part.of(solid, fullness)), Optional.empty(), notes);
  }

  private Optional<CurvedFace> curved(Shape.BrepFace face, List<List<BrepEdges.Use>> loops) {
    if (face.surface() instanceof Surface.Plane) {
      return Optional.empty();
    }
    if (!keepsShape(at)) {
      throw NotBuildableException.notHandled("exact brep with curved faces, stretched unevenly");
    }
    return Optional.of(new CurvedFace(map(face.surface()), loops));
  }

  private static FaceMap map(Surface surface) {
    if (surface instanceof Surface.Cylinder c) {
      return new CylinderMap(c);
    }
    if (surface instanceof Surface.Spline s) {
      return new SplineMap(s);
    }
    String kind =
        surface instanceof Surface.Unsupported u
            ? u.kind()
            : surface.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT) + " face";
    throw NotBuildableException.notHandled("exact brep with a " + kind);
  }

  private static boolean keepsShape(Transform3 t) {
    double size = t.x().length();
    double allowed = 1e-9 * size * size;
    return Math.abs(t.x().dot(t.y())) <= allowed
        && Math.abs(t.y().dot(t.z())) <= allowed
        && Math.abs(t.z().dot(t.x())) <= allowed
        && Math.abs(t.y().length() - size) <= 1e-9 * size
        && Math.abs(t.z().length() - size) <= 1e-9 * size;
  }

  private void strips(CurvedFace face, boolean sameSense) {
    var cells = new FaceCells(face);
    for (FaceCells.Cell cell : cells.cells()) {
      int[] ring = new int[cell.corners().size()];
      for (int i = 0; i < ring.length; i++) {
        ring[i] = vertex(cell.corners().get(sameSense ? i : ring.length - 1 - i));
      }
      double flat = cell.flatArea();
      if (flat > 0 && cell.area().area() > 0) {
        builder.face(FaceLabel.MESH, cell.area().area() / flat, ring);
      }
      flux += (sameSense ? 1 : -1) * cell.area().flux();
    }
  }

  private void plane(Surface.Plane plane, Shape.BrepFace face, List<List<BrepEdges.Use>> loops) {
    Transform3 back = plane.frame().inverse();
    var rings = new ArrayList<List<Vec3>>();
    var flat = new ArrayList<Double>();
    double exact = 0;
    double sum = 0;
    int outer = 0;
    for (int i = 0; i < loops.size(); i++) {
      rings.add(corners(loops.get(i)));
      flat.add(area(rings.get(i), back));
      outer = Math.abs(flat.get(i)) > Math.abs(flat.get(outer)) ? i : outer;
    }
    for (int i = 0; i < loops.size(); i++) {
      int sign = i == outer ? 1 : -1;
      sum += sign * Math.abs(flat.get(i));
      exact += sign * Math.abs(exact(face, i, back));
    }
    if (!(sum > 0) || !(exact > 0)) {
      return;
    }
    builder.face(FaceLabel.MESH, exact / sum, numbered(rings, flat, outer, face.sameSense()));
    Vec3 normal = plane.frame().z().times(face.sameSense() ? 1 : -1);
    flux += exact * normal.dot(rings.get(outer).get(0));
  }

  /** Outer ring first and counter-clockwise from outside, holes the other way round. */
  private int[][] numbered(
      List<List<Vec3>> rings, List<Double> flat, int outer, boolean sameSense) {
    var out = new ArrayList<int[]>();
    for (int i = 0; i < rings.size(); i++) {
      List<Vec3> ring = rings.get(i);
      boolean onward = flat.get(i) > 0 == ((i == outer) == sameSense);
      int[] numbers = new int[ring.size()];
      for (int k = 0; k < numbers.length; k++) {
        numbers[k] = vertex(ring.get(onward ? k : numbers.length - 1 - k));
      }
      out.add(i == outer ? 0 : out.size(), numbers);
    }
    return out.toArray(new int[0][]);
  }

  private static double exact(Shape.BrepFace face, int loop, Transform3 back) {
    List<Segment2> pieces =
        face.bounds().get(loop).segments().stream().map(s -> flat(s.map(back))).toList();
    return new Ring(pieces).area();
  }

  private static Segment2 flat(Segment3 s) {
    if (s instanceof Segment3.Line l) {
      return new Segment2.Line(flat(l.from()), flat(l.to()));
    }
    if (s instanceof Segment3.Arc a) {
      return new Segment2.Arc(flat(a.centre()), flat(a.u()), flat(a.v()), a.start(), a.sweep());
    }
    var p = (Segment3.Spline) s;
    return new Segment2.Spline(
        p.degree(), p.poles().stream().map(Breps::flat).toList(), p.weights(), p.knots());
  }

  private static Vec2 flat(Vec3 p) {
    return new Vec2(p.x(), p.y());
  }

  private static List<Vec3> corners(List<BrepEdges.Use> loop) {
    var out = new ArrayList<Vec3>();
    for (BrepEdges.Use use : loop) {
      use.places().forEach(t -> out.add(use.at(t)));
    }
    return out;
  }

  private static double area(List<Vec3> ring, Transform3 back) {
    Vec2 first = flat(back.apply(ring.get(0)));
    double sum = 0;
    for (int i = 1; i + 1 < ring.size(); i++) {
      Vec2 a = flat(back.apply(ring.get(i))).minus(first);
      sum += 0.5 * a.cross(flat(back.apply(ring.get(i + 1))).minus(first));
    }
    return sum;
  }

  private int vertex(Vec3 p) {
    Vec3 q = at.apply(p);
    return welder.vertex(q.x(), q.y(), q.z());
  }
}
