package org.coatrun.testmodels.ifc;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.testmodels.section.IShape;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Mesh;
import org.coatrun.testmodels.shape.Vec2;
import org.coatrun.testmodels.shape.Vec3;
import org.coatrun.testmodels.step.Ref;
import org.coatrun.testmodels.step.Token;

/** Solids in an element's own frame. */
public final class Solids {
  private final IfcWriter ifc;
  private Ref world;

  Solids(IfcWriter ifc) {
    this.ifc = ifc;
  }

  /** Adds an extrusion along z from the frame's origin. */
  public Ref extrude(Ref profile, Frame at, double depth) {
    Ref up = ifc.geometry().direction(Vec3.Z);
    return ifc.add("IFCEXTRUDEDAREASOLID", profile, position(at), up, ifc.length(depth));
  }

  private Ref position(Frame at) {
    if (!at.equals(Frame.WORLD)) {
      return ifc.geometry().placement(at);
    }
    if (world == null) {
      world = ifc.geometry().placement(at);
    }
    return world;
  }

  /** Adds an extrusion in the element's frame. */
  public Body straight(Ref profile, double depth) {
    return Body.of("SweptSolid", extrude(profile, Frame.WORLD, depth));
  }

  /**
   * Adds an I-shape that tapers, its top flange level at y = 0; a brep where the schema has none.
   */
  public Body tapered(IShape start, IShape end, double length) {
    if (ifc.isOld()) {
      return brep(taperedMesh(start, end, length));
    }
    Ref from = ifc.profiles().raised(start, -start.depth() / 2);
    Ref to = ifc.profiles().raised(end, -end.depth() / 2);
    Ref up = ifc.geometry().direction(Vec3.Z);
    double depth = ifc.length(length);
    Ref at = position(Frame.WORLD);
    Ref solid = ifc.add("IFCEXTRUDEDAREASOLIDTAPERED", from, at, up, depth, to);
    return Body.of("AdvancedSweptSolid", solid);
  }

  private static Mesh taperedMesh(IShape start, IShape end, double length) {
    return Mesh.between(lowered(start), 0, lowered(end), length);
  }

  private static List<Vec2> lowered(IShape section) {
    double down = section.depth() / 2;
    return section.outline(4).stream().map(p -> new Vec2(p.x(), p.y() - down)).toList();
  }

  /** Adds a profile turned about an axis that runs along y through (x, 0). */
  public Body revolved(Ref profile, double axisX, double radians) {
    Ref at = ifc.geometry().point(new Vec3(axisX, 0, 0));
    Ref axis = ifc.add("IFCAXIS1PLACEMENT", at, ifc.geometry().direction(Vec3.Y));
    Ref position = position(Frame.WORLD);
    Ref solid = ifc.add("IFCREVOLVEDAREASOLID", profile, position, axis, ifc.angle(radians));
    return Body.of("SweptSolid", solid);
  }

  /** Adds a round bar along a line. */
  public Body bar(List<Vec3> line, double radius) {
    Ref directrix = ifc.geometry().line(line);
    double end = line.size() - 1.0;
    double size = ifc.length(radius);
    Ref solid = ifc.add("IFCSWEPTDISKSOLID", directrix, size, Token.UNSET, 0.0, end);
    return Body.of("AdvancedSweptSolid", solid);
  }

  /**
   * Adds a half-space that fills a prism above or below a plane.
   *
   * @param base the plane; its z is the normal
   * @param agreement false: the filled side is the one that the normal points to
   * @param prism the frame of the prism, open along its z
   * @param boundary the prism's outline
   */
  public Ref halfSpace(Frame base, boolean agreement, Frame prism, List<Vec2> boundary) {
    Ref plane = ifc.add("IFCPLANE", ifc.geometry().placement(base));
    Ref position = ifc.geometry().placement(prism);
    Ref line = ifc.geometry().closed(boundary);
    return ifc.add("IFCPOLYGONALBOUNDEDHALFSPACE", plane, agreement, position, line);
  }

  /** Adds a half-space without bounds. */
  public Ref halfSpace(Frame base, boolean agreement) {
    Ref plane = ifc.add("IFCPLANE", ifc.geometry().placement(base));
    return ifc.add("IFCHALFSPACESOLID", plane, agreement);
  }

  /** Adds what is left when a half-space is taken away. */
  public Ref clip(Ref solid, Ref halfSpace) {
    return ifc.add("IFCBOOLEANCLIPPINGRESULT", Token.of("DIFFERENCE"), solid, halfSpace);
  }

  /** Adds what is left when a solid is taken away. */
  public Ref cut(Ref solid, Ref cutter) {
    return ifc.add("IFCBOOLEANRESULT", Token.of("DIFFERENCE"), solid, cutter);
  }

  /** Adds a body of flat faces. */
  public Body brep(Mesh mesh) {
    List<Ref> points = mesh.points().stream().map(ifc.geometry()::point).toList();
    List<Ref> faces = new ArrayList<>();
    for (int[] face : mesh.faces()) {
      List<Ref> loop = new ArrayList<>(face.length);
      for (int corner : face) {
        loop.add(points.get(corner));
      }
      Ref bound = ifc.add("IFCFACEOUTERBOUND", ifc.add("IFCPOLYLOOP", loop), true);
      faces.add(ifc.add("IFCFACE", List.of(bound)));
    }
    Ref shell = ifc.add("IFCCLOSEDSHELL", faces);
    return Body.of("Brep", ifc.add("IFCFACETEDBREP", shell));
  }

  /** Adds a body of triangles; a brep of triangles where the schema has no such thing. */
  public Body triangles(Mesh mesh) {
    Mesh cut = mesh.triangulated();
    if (ifc.isOld()) {
      return brep(cut);
    }
    List<double[]> points = new ArrayList<>();
    cut.points().forEach(p -> points.add(scaled(p)));
    List<int[]> corners = new ArrayList<>();
    cut.faces().forEach(f -> corners.add(new int[] {f[0] + 1, f[1] + 1, f[2] + 1}));
    Ref list =
        ifc.options().schema() == Schema.IFC4
            ? ifc.add("IFCCARTESIANPOINTLIST3D", points)
            : ifc.add("IFCCARTESIANPOINTLIST3D", points, Token.UNSET);
    Token none = Token.UNSET;
    Ref set = ifc.add("IFCTRIANGULATEDFACESET", list, none, true, corners, none);
    return Body.of("Tessellation", set);
  }

  private double[] scaled(Vec3 p) {
    return new double[] {ifc.length(p.x()), ifc.length(p.y()), ifc.length(p.z())};
  }

  /** Adds a map of a body, to be used many times. */
  public Ref map(Body body) {
    Ref origin = ifc.geometry().placement(Frame.WORLD);
    return ifc.add("IFCREPRESENTATIONMAP", origin, ifc.products().representation(body));
  }

  /** Uses a map where it stands. */
  public Body mapped(Ref map) {
    Token none = Token.UNSET;
    Ref origin = ifc.geometry().point(Vec3.ZERO);
    Ref operator = ifc.add("IFCCARTESIANTRANSFORMATIONOPERATOR3D", none, none, origin, none, none);
    return Body.of("MappedRepresentation", ifc.add("IFCMAPPEDITEM", map, operator));
  }

  /** Uses a map mirrored in the plane z = length / 2, so that start and end change places. */
  public Body mirrored(Ref map, double length) {
    Geometry g = ifc.geometry();
    Ref origin = g.point(new Vec3(0, 0, length));
    Ref operator =
        ifc.add(
            "IFCCARTESIANTRANSFORMATIONOPERATOR3D",
            g.direction(Vec3.X),
            g.direction(Vec3.Y),
            origin,
            1.0,
            g.direction(new Vec3(0, 0, -1)));
    return Body.of("MappedRepresentation", ifc.add("IFCMAPPEDITEM", map, operator));
  }
}
