package org.coatrun.testmodels.erect;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.testmodels.ifc.Body;
import org.coatrun.testmodels.ifc.IfcWriter;
import org.coatrun.testmodels.section.IShape;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.section.Rectangle;
import org.coatrun.testmodels.section.Section;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Mesh;
import org.coatrun.testmodels.shape.Vec2;
import org.coatrun.testmodels.shape.Vec3;
import org.coatrun.testmodels.step.Ref;

/** Makes the bodies of straight members in the form that each asks for. */
final class MemberBodies {
  private static final double MARGIN = 0.02;
  private static final int CHORDS = 3;
  private final IfcWriter ifc;
  private final Map<MapKey, Ref> maps = new HashMap<>();

  MemberBodies(IfcWriter ifc) {
    this.ifc = ifc;
  }

  private record MapKey(Section section, long length, boolean top, Cope start, Cope end) {}

  Body body(Piece piece) {
    return switch (piece.form()) {
      case HALF_SPACES -> clipped(piece);
      case BOXES -> boxed(piece);
      case OPENINGS -> Body.of("SweptSolid", extrusion(piece));
      case MAPPED -> ifc.solids().mapped(map(piece));
      case MIRRORED -> {
        Ref map = map(piece.coped(piece.endCope(), piece.startCope()));
        yield ifc.solids().mirrored(map, piece.length());
      }
      case BREP -> ifc.solids().brep(mesh(piece));
      case TRIANGLES -> ifc.solids().triangles(mesh(piece));
    };
  }

  private Ref map(Piece piece) {
    long length = Math.round(piece.length() * 1e6);
    MapKey key =
        new MapKey(piece.section(), length, piece.top(), piece.startCope(), piece.endCope());
    Ref known = maps.get(key);
    if (known == null) {
      known = ifc.solids().map(clipped(piece));
      maps.put(key, known);
    }
    return known;
  }

  private Ref extrusion(Piece piece) {
    Ref profile = ifc.profiles().of(piece.section());
    return ifc.solids().extrude(profile, Frame.at(0, piece.drop(), 0), piece.length());
  }

  private Body clipped(Piece piece) {
    Ref solid = extrusion(piece);
    if (piece.startCope().isCut()) {
      solid = ifc.solids().clip(solid, above(piece, piece.startCope(), false));
    }
    if (piece.endCope().isCut()) {
      solid = ifc.solids().clip(solid, above(piece, piece.endCope(), true));
    }
    return Body.of(isCut(piece) ? "Clipping" : "SweptSolid", solid);
  }

  private Ref above(Piece piece, Cope cope, boolean atEnd) {
    Vec3 corner = new Vec3(0, -cope.depth(), 0);
    Vec3 normal = atEnd ? new Vec3(0, -1, 0) : Vec3.Y;
    Frame plane = new Frame(corner, Vec3.X, normal);
    Frame prism = new Frame(corner, Vec3.X, Vec3.Y);
    double half = reach(piece);
    double from = atEnd ? piece.length() - cope.length() : -MARGIN;
    double to = atEnd ? piece.length() + MARGIN : cope.length();
    // The prism's y runs against the member's z.
    List<Vec2> plan = Outline.box("", -half, -to, half, -from).corners();
    return ifc.solids().halfSpace(plane, atEnd, prism, plan);
  }

  private Body boxed(Piece piece) {
    Ref solid = extrusion(piece);
    if (piece.startCope().isCut()) {
      solid = ifc.solids().cut(solid, box(piece, piece.startCope(), false));
    }
    if (piece.endCope().isCut()) {
      solid = ifc.solids().cut(solid, box(piece, piece.endCope(), true));
    }
    return Body.of(isCut(piece) ? "CSG" : "SweptSolid", solid);
  }

  /** The box that a cope takes away, a little larger than the beam where that does not matter. */
  Ref box(Piece piece, Cope cope, boolean atEnd) {
    double height = cope.depth() + MARGIN;
    Rectangle face = new Rectangle("cope", 2 * reach(piece), height);
    double z = atEnd ? piece.length() - cope.length() : -MARGIN;
    Frame at = Frame.at(0, MARGIN - height / 2, z);
    return ifc.solids().extrude(ifc.profiles().of(face), at, cope.length() + MARGIN);
  }

  private static double reach(Piece piece) {
    return piece.section() instanceof IShape i ? i.width() / 2 + MARGIN : piece.section().depth();
  }

  private static boolean isCut(Piece piece) {
    return piece.startCope().isCut() || piece.endCope().isCut();
  }

  /** The member with its fillets as chords. */
  Mesh mesh(Piece piece) {
    double y = piece.drop();
    List<Vec2> moved =
        corners(piece.section()).stream().map(p -> new Vec2(p.x(), p.y() + y)).toList();
    return Mesh.prism(moved, piece.length());
  }

  private static List<Vec2> corners(Section section) {
    if (section instanceof IShape i) {
      return i.outline(CHORDS);
    } else if (section instanceof Rectangle r) {
      double x = r.width() / 2;
      return Outline.box("", -x, -r.depth() / 2, x, r.depth() / 2).corners();
    } else if (section instanceof Outline o) {
      return o.corners();
    }
    throw new IllegalArgumentException("No mesh for a " + section.name());
  }
}
