package org.coatrun.testmodels.scenario;

import static org.coatrun.testmodels.scenario.HarbourGrid.X;
import static org.coatrun.testmodels.scenario.HarbourGrid.Y;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.erect.Fabric;
import org.coatrun.testmodels.erect.Grade;
import org.coatrun.testmodels.erect.Level;
import org.coatrun.testmodels.erect.Piece;
import org.coatrun.testmodels.facts.Matter;
import org.coatrun.testmodels.ifc.ElementKind;
import org.coatrun.testmodels.ifc.IfcWriter;
import org.coatrun.testmodels.ifc.Item;
import org.coatrun.testmodels.ifc.Written;
import org.coatrun.testmodels.section.IShape;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.section.Rectangle;
import org.coatrun.testmodels.section.Section;
import org.coatrun.testmodels.section.Sections;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Vec3;
import org.coatrun.testmodels.step.Ref;

/** Joists, penthouse beams, the curved canopy, outriggers, and what is not steel or has no body. */
final class HarbourExtras {
  private static final double JOIST = 0.4;
  private final Erector erector;
  private final Fabric fabric;
  private final IfcWriter ifc;

  HarbourExtras(Erector erector) {
    this.erector = erector;
    this.fabric = new Fabric(erector);
    this.ifc = erector.ifc();
  }

  /** Adds three bar joists in each bay of the outer rows of the roof. */
  void joists(Level roof) {
    int number = 0;
    for (int x = 0; x < 4; x++) {
      for (int k = 1; k <= 3; k++) {
        joist(roof, ++number, X[x] + k * 1.875, Y[0], Y[1]);
        joist(roof, ++number, X[x] + k * 1.875, Y[2], Y[3]);
      }
    }
  }

  private void joist(Level roof, int number, double x, double y0, double y1) {
    Item item = Item.of(ElementKind.ASSEMBLY, "TRUSS", "Bar joist", "16K4", "J" + number);
    Written whole = erector.bodiless(roof, item, Matter.STEEL);
    double top = HarbourGrid.steel(HarbourGrid.ROOF) + HarbourGrid.SEAT;
    double high = top - 0.0254;
    double low = top - JOIST + 0.0254;
    Section chord = Sections.TWO_L2X2X1_4;
    List<Ref> parts = new ArrayList<>();
    String mark = "J" + number;
    Vec3 down = new Vec3(0, 0, -1);
    Vec3 left = new Vec3(x, y0 - 0.06, high);
    Vec3 right = new Vec3(x, y1 + 0.06, high);
    Piece upper = Piece.member("CHORD", "Top chord", mark + "-T", chord, Grade.A36, left, right);
    parts.add(erector.part(roof, whole, upper.turned(down)).ref());
    Vec3 from = new Vec3(x, y0 + 0.5, low);
    Vec3 to = new Vec3(x, y1 - 0.5, low);
    Piece lower = Piece.member("CHORD", "Bottom chord", mark + "-B", chord, Grade.A36, from, to);
    parts.add(erector.part(roof, whole, lower).ref());
    int panels = 8;
    double panel = (y1 - y0 - 1.0) / panels;
    Section web = new org.coatrun.testmodels.section.Round("Rod 3/4 in", 0.019);
    for (int i = 0; i < panels; i++) {
      boolean rising = i % 2 == 0;
      Vec3 a = new Vec3(x, y0 + 0.5 + i * panel, rising ? low : high);
      Vec3 b = new Vec3(x, y0 + 0.5 + (i + 1) * panel, rising ? high : low);
      Piece rod = Piece.member("STRUT", "Web", mark + "-W" + (i + 1), web, Grade.A36, a, b);
      parts.add(erector.part(roof, whole, rod).ref());
    }
    ifc.spatial().aggregate(whole.ref(), parts);
  }

  /** Adds the beams of the penthouse's roof between the posts and the core. */
  void penthouse(Level level) {
    double steel = HarbourGrid.steel(HarbourGrid.PENTHOUSE);
    double post = Sections.HSS6X6X3_8.depth() / 2 + HarbourGrid.GAP;
    double wall = HarbourGrid.WALL + HarbourGrid.GAP;
    for (int y = 1; y <= 2; y++) {
      Vec3 a = new Vec3(X[1] + post, Y[y], steel);
      Vec3 b = new Vec3(X[2] - wall, Y[y], steel);
      erector.member(level, Piece.beam("PG" + y, Sections.W18X35, a, b));
    }
    double web = Sections.W18X35.width() / 2 + HarbourGrid.GAP;
    for (int k = 0; k < 3; k++) {
      double end = k == 0 ? post : web;
      Vec3 a = new Vec3(X[1] + 2.5 * k, Y[1] + end, steel);
      Vec3 b = new Vec3(X[1] + 2.5 * k, Y[2] - end, steel);
      erector.member(level, Piece.beam("PB" + k, Sections.W12X26, a, b));
    }
  }

  /** Adds two tapered outriggers east of line 5 at the roof. */
  void outriggers(Level roof) {
    IShape deep = Sections.W12X26;
    IShape thin =
        new IShape("TB6", deep.depth() / 2, deep.width(), deep.web(), deep.flange(), deep.fillet());
    double face = Sections.HSS8X8X1_2.depth() / 2 + HarbourGrid.GAP;
    for (int y = 1; y <= 2; y++) {
      Vec3 a = new Vec3(X[4] + face, Y[y], HarbourGrid.steel(HarbourGrid.ROOF));
      Frame at = Frame.along(a, a.plus(Vec3.X), Vec3.Z);
      Item item = Item.of(ElementKind.BEAM, "BEAM", "Outrigger", "W12X26 tapered", "T" + y);
      erector.element(roof, item, Grade.A992, at, ifc.solids().tapered(deep, thin, 1.8));
    }
  }

  /** Adds the canopy over the entrance: stubs, a curved beam, posts, rafters and glass. */
  void canopy(Level ground, Level first) {
    double steel = HarbourGrid.steel(1) - 0.6;
    IShape curved = Sections.W12X14;
    double y = -1.0;
    double radius = 5.4375;
    Vec3 centre = new Vec3((X[1] + X[2]) / 2, y + radius - 1.5, steel - curved.depth() / 2);
    double half = StrictMath.asin(3.55 / radius);
    double begin = -Math.PI / 2 - half;
    Vec3 out = new Vec3(StrictMath.cos(begin), StrictMath.sin(begin), 0);
    // The section's x points away from the centre; turning about y then runs along the arc.
    Frame at = new Frame(centre.plus(out.times(radius)), out, Vec3.Z.cross(out));
    Item item = Item.of(ElementKind.BEAM, "BEAM", "Canopy beam", curved.name(), "K1");
    erector.element(
        first,
        item,
        Grade.A992,
        turned(at),
        ifc.solids().revolved(ifc.profiles().of(curved), radius, 2 * half));
    for (int x = 1; x <= 2; x++) {
      double face = Sections.W12X87.web() / 2 + HarbourGrid.GAP;
      Vec3 a = new Vec3(X[x], -face, steel);
      erector.member(
          first, Piece.beam("K" + (x + 1), Sections.W12X26, a, new Vec3(X[x], -1.3, steel)));
    }
    for (int k = 0; k < 2; k++) {
      Vec3 foot = new Vec3(9.75 + 3 * k, postY(centre, radius, 9.75 + 3 * k), 0);
      Vec3 head = new Vec3(foot.x(), foot.y(), steel - curved.depth());
      String mark = "K" + (4 + k);
      erector.member(ground, Piece.column(mark, Sections.HSS8_625, Grade.A500, foot, head, Vec3.X));
    }
    covering(first, steel);
  }

  private static double postY(Vec3 centre, double radius, double x) {
    double dx = x - centre.x();
    return centre.y() - Math.sqrt(radius * radius - dx * dx);
  }

  private static Frame turned(Frame at) {
    return new Frame(at.origin(), at.x().times(-1), at.z());
  }

  private void covering(Level level, double steel) {
    Rectangle timber = new Rectangle("Glulam 80x160", 0.08, 0.16);
    for (int k = 0; k < 3; k++) {
      double x = 9.0 + 2.25 * k;
      Vec3 a = new Vec3(x, -0.4, steel + 0.08);
      Vec3 b = new Vec3(x, -2.0, steel + 0.08);
      erector.member(
          level, Piece.member("RAFTER", "Canopy rafter", "R" + k, timber, Grade.TIMBER, a, b));
    }
    Outline pane = Outline.box("pane", 0, 0, 4.6, 1.6);
    Frame at = Frame.at(8.95, -2.0, steel + 0.16);
    fabric.plate(level, "Canopy glass", "GL1", pane, 0.0175, at, Grade.GLASS);
    Rectangle mullion = new Rectangle("Mullion 50x120", 0.05, 0.12);
    for (int k = 0; k < 4; k++) {
      Vec3 foot = new Vec3(8.25 + 2 * k, -0.25, 0);
      Vec3 head = foot.plus(new Vec3(0, 0, 3.4));
      erector.member(
          level, Piece.member("MULLION", "Mullion", "M" + k, mullion, Grade.ALUMINIUM, foot, head));
    }
  }

  /** Adds the loading dock of concrete, a rebar, a proxy of steel, and members without a body. */
  void odds(Level ground) {
    Rectangle pier = new Rectangle("Concrete 400x400", 0.4, 0.4);
    for (int k = 0; k < 2; k++) {
      Vec3 foot = new Vec3(24.5 + 4 * k, 23.0, 0);
      Vec3 head = foot.plus(new Vec3(0, 0, 3.6));
      String mark = "D" + k;
      erector.member(ground, Piece.column(mark, pier, Grade.CONCRETE, foot, head, Vec3.X));
    }
    Vec3 a = new Vec3(24.3, 23.0, 4.1);
    Piece beam =
        Piece.beam("D2", new Rectangle("Concrete 400x500", 0.4, 0.5), a, a.plus(Vec3.X.times(4.4)));
    erector.member(ground, beam.named(ElementKind.BEAM, "BEAM", "Dock beam", Grade.CONCRETE));
    List<Vec3> line = List.of(new Vec3(0, 0, 0.1), new Vec3(0, 0, 1.2), new Vec3(0.3, 0, 1.2));
    Item bar =
        new Item(
            ElementKind.REINFORCING_BAR, "MAIN", "Starter bar", "No. 6", "S1", List.of(0.019, 1.4));
    Frame at = Frame.at(24.4, 22.9, 0);
    erector.element(ground, bar, Grade.REBAR, at, ifc.solids().bar(line, 0.0095));
    Vec3 low = new Vec3(23.5, 21.5, 3.2);
    Piece lifting =
        Piece.member(
            "MEMBER",
            "Hoist beam",
            "X1",
            Sections.W8X18,
            Grade.A992,
            low,
            low.plus(Vec3.X.times(4)));
    Item proxy = Item.of(ElementKind.PROXY, "NOTDEFINED", "Hoist beam", "W8X18", "X1");
    Frame along = Frame.along(lifting.start(), lifting.end(), Vec3.Z);
    erector.element(
        ground,
        proxy,
        Grade.A992,
        along,
        ifc.solids().straight(ifc.profiles().of(Sections.W8X18), lifting.length()));
    erector.bodiless(
        ground, Item.of(ElementKind.MEMBER, "MEMBER", "Sag rod", "Rod 3/4 in", "X2"), Matter.STEEL);
  }
}
