package org.coatrun.testmodels.ifc;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.testmodels.section.Angle;
import org.coatrun.testmodels.section.DoubleAngle;
import org.coatrun.testmodels.section.IShape;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.section.Rectangle;
import org.coatrun.testmodels.section.RectangularHollow;
import org.coatrun.testmodels.section.Round;
import org.coatrun.testmodels.section.RoundHollow;
import org.coatrun.testmodels.section.Section;
import org.coatrun.testmodels.shape.Vec2;
import org.coatrun.testmodels.step.Ref;
import org.coatrun.testmodels.step.Token;

/** Profiles; each section is written once. */
public final class Profiles {
  private static final Token AREA = Token.of("AREA");
  private final IfcWriter ifc;
  private Ref centre;
  private final Map<Section, Ref> written = new HashMap<>();

  Profiles(IfcWriter ifc) {
    this.ifc = ifc;
  }

  /** Returns the profile of a section. */
  public Ref of(Section section) {
    Ref known = written.get(section);
    if (known == null) {
      known = write(section);
      written.put(section, known);
    }
    return known;
  }

  /** Adds a profile that will not be used again and need not be kept. */
  public Ref once(Section section) {
    return write(section);
  }

  private Ref write(Section section) {
    if (section instanceof IShape i) {
      return iShape(i, position(0));
    } else if (section instanceof RectangularHollow h) {
      return rectangularHollow(h);
    } else if (section instanceof RoundHollow h) {
      double radius = ifc.length(h.diameter() / 2);
      double wall = ifc.length(h.wall());
      return ifc.add("IFCCIRCLEHOLLOWPROFILEDEF", AREA, h.name(), position(0), radius, wall);
    } else if (section instanceof Round r) {
      double radius = ifc.length(r.diameter() / 2);
      return ifc.add("IFCCIRCLEPROFILEDEF", AREA, r.name(), position(0), radius);
    } else if (section instanceof Rectangle r) {
      double x = ifc.length(r.width());
      double y = ifc.length(r.depth());
      return ifc.add("IFCRECTANGLEPROFILEDEF", AREA, r.name(), position(0), x, y);
    } else if (section instanceof Angle a) {
      return angle(a);
    } else if (section instanceof DoubleAngle d) {
      return doubleAngle(d);
    }
    Outline outline = (Outline) section;
    Ref line = ifc.geometry().closed(outline.corners());
    return ifc.add("IFCARBITRARYCLOSEDPROFILEDEF", AREA, outline.name(), line);
  }

  /** Adds an I-shape whose centre stands beside the origin, in y. */
  public Ref raised(IShape section, double y) {
    return iShape(section, position(y));
  }

  private Ref position(double y) {
    if (y != 0) {
      return placement(y);
    }
    if (centre == null) {
      centre = placement(0);
    }
    return centre;
  }

  private Ref placement(double y) {
    Ref origin = ifc.geometry().point(new Vec2(0, y));
    return ifc.add("IFCAXIS2PLACEMENT2D", origin, Token.UNSET);
  }

  private Ref iShape(IShape i, Ref position) {
    double width = ifc.length(i.width());
    double depth = ifc.length(i.depth());
    double web = ifc.length(i.web());
    double flange = ifc.length(i.flange());
    double fillet = ifc.length(i.fillet());
    String type = "IFCISHAPEPROFILEDEF";
    if (ifc.isOld()) {
      return ifc.add(type, AREA, i.name(), position, width, depth, web, flange, fillet);
    }
    Token none = Token.UNSET;
    return ifc.add(type, AREA, i.name(), position, width, depth, web, flange, fillet, none, none);
  }

  private Ref rectangularHollow(RectangularHollow h) {
    return ifc.add(
        "IFCRECTANGLEHOLLOWPROFILEDEF",
        AREA,
        h.name(),
        position(0),
        ifc.length(h.width()),
        ifc.length(h.depth()),
        ifc.length(h.wall()),
        ifc.length(h.innerRadius()),
        ifc.length(h.outerRadius()));
  }

  private Ref angle(Angle a) {
    Token none = Token.UNSET;
    double depth = ifc.length(a.depth());
    double width = ifc.length(a.width());
    double thick = ifc.length(a.thickness());
    double fillet = ifc.length(a.fillet());
    Ref at = position(0);
    String type = "IFCLSHAPEPROFILEDEF";
    if (ifc.isOld()) {
      return ifc.add(type, AREA, a.name(), at, depth, width, thick, fillet, none, none, none, none);
    }
    return ifc.add(type, AREA, a.name(), at, depth, width, thick, fillet, none, none);
  }

  private Ref doubleAngle(DoubleAngle d) {
    double shift = (d.angle().width() + d.gap()) / 2;
    Ref single = of(d.angle());
    Ref right = derived(single, "right angle", 1, shift);
    Ref left = derived(single, "left angle", -1, -shift);
    return ifc.add("IFCCOMPOSITEPROFILEDEF", AREA, d.name(), List.of(right, left), Token.UNSET);
  }

  private Ref derived(Ref parent, String label, double sign, double shift) {
    Ref x = ifc.add("IFCDIRECTION", new double[] {sign, 0});
    Ref y = ifc.add("IFCDIRECTION", new double[] {0, 1});
    Ref origin = ifc.geometry().point(new Vec2(shift, 0));
    Ref operator = ifc.add("IFCCARTESIANTRANSFORMATIONOPERATOR2D", x, y, origin, 1.0);
    return ifc.add("IFCDERIVEDPROFILEDEF", AREA, Token.UNSET, parent, operator, label);
  }
}
