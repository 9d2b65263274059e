package org.coatrun.testmodels.scenario;

import static org.coatrun.testmodels.scenario.HarbourGrid.X;
import static org.coatrun.testmodels.scenario.HarbourGrid.Y;

import java.util.List;
import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.erect.Fabric;
import org.coatrun.testmodels.erect.Grade;
import org.coatrun.testmodels.erect.Level;
import org.coatrun.testmodels.erect.Piece;
import org.coatrun.testmodels.erect.PropertyGroup;
import org.coatrun.testmodels.ifc.ElementKind;
import org.coatrun.testmodels.ifc.Written;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.section.Section;
import org.coatrun.testmodels.section.Sections;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Vec3;

/** Columns in three lengths with splices above Level 3 and Level 5, base plates, braces. */
final class HarbourColumns {
  private static final double BASE_PLATE = 0.038;
  private static final double CAP = 0.025;
  private static final double GUSSET = 0.0127;
  private final Erector erector;
  private final Fabric fabric;
  private final List<Level> levels;

  HarbourColumns(Erector erector, List<Level> levels) {
    this.erector = erector;
    this.fabric = new Fabric(erector);
    this.levels = levels;
  }

  void columns() {
    double first = HarbourGrid.LEVELS[2] + HarbourGrid.SPLICE;
    double second = HarbourGrid.LEVELS[4] + HarbourGrid.SPLICE;
    double head = HarbourGrid.steel(HarbourGrid.ROOF) - CAP;
    for (int y = 0; y < Y.length; y++) {
      for (int x = 0; x < X.length; x++) {
        if (!HarbourGrid.isCore(x, y)) {
          column(0, x, y, 1, HarbourGrid.BASE, first);
          column(2, x, y, 3, first, second);
          column(4, x, y, 5, second, head);
          plate(levels.get(0), "Base plate", x, y, 0.25, HarbourGrid.BASE - BASE_PLATE, BASE_PLATE);
          plate(levels.get(4), "Cap plate", x, y, 0.16, head, CAP);
        }
      }
    }
    penthouse();
  }

  private void column(int level, int x, int y, int floor, double foot, double head) {
    Section section = HarbourGrid.column(x, floor);
    Grade grade = x == 4 ? Grade.A500 : Grade.A992;
    String mark = "C" + (level / 2 + 1) + "-" + HarbourGrid.point(x, y);
    Piece column = Piece.column(mark, section, grade, at(x, y, foot), at(x, y, head), Vec3.X);
    Written written = erector.member(levels.get(level), column);
    erector.describe(written, new PropertyGroup.Rating(ElementKind.COLUMN, "2 h"));
    erector.describe(written, new PropertyGroup.Finish("Shop primer"));
    erector.quantify(written, column);
  }

  private void plate(Level level, String name, int x, int y, double half, double z, double thick) {
    Outline outline = Outline.box(name, -half, -half, half, half);
    String mark = name.charAt(0) + "P-" + HarbourGrid.point(x, y);
    fabric.plate(level, name, mark, outline, thick, Frame.at(X[x], Y[y], z), Grade.A36);
  }

  private void penthouse() {
    Level roof = levels.get(HarbourGrid.ROOF);
    for (int y = 1; y <= 2; y++) {
      Vec3 foot = at(1, y, HarbourGrid.steel(HarbourGrid.ROOF));
      Vec3 head = at(1, y, HarbourGrid.steel(HarbourGrid.PENTHOUSE));
      String mark = "C4-" + HarbourGrid.point(1, y);
      Section section = Sections.HSS6X6X3_8;
      erector.member(roof, Piece.column(mark, section, Grade.A500, foot, head, Vec3.X));
    }
  }

  private static Vec3 at(int x, int y, double z) {
    return new Vec3(X[x], Y[y], z);
  }

  /** Adds an inverted V in the middle bay of line 1 on each storey, with gusset plates. */
  void braces() {
    for (int i = 0; i < HarbourGrid.ROOF; i++) {
      double low = HarbourGrid.LEVELS[i];
      double high = HarbourGrid.steel(i + 1) - Sections.W16X26.depth();
      double middle = (Y[1] + Y[2]) / 2;
      brace(i, 1, Y[1], middle, low, high);
      brace(i, 2, Y[2], middle, low, high);
      Vec3 apex = new Vec3(-GUSSET / 2, middle, high);
      List<org.coatrun.testmodels.shape.Vec2> corners =
          List.of(corner(-0.5, 0), corner(-0.4, -0.42), corner(0.4, -0.42), corner(0.5, 0));
      gusset(i, "GP" + i + "-0", corners, apex);
    }
  }

  private void brace(int storey, int side, double foot, double apex, double low, double high) {
    Vec3 start = new Vec3(0, foot, low);
    Vec3 end = new Vec3(0, apex, high);
    Vec3 along = end.minus(start).unit();
    boolean hollow = storey < 3;
    Section section = hollow ? Sections.HSS6X6X3_8 : Sections.TWO_L4X4X3_8;
    Grade grade = hollow ? Grade.A500 : Grade.A36;
    Vec3 from = start.plus(along.times(0.5));
    Vec3 to = end.minus(along.times(0.36));
    String mark = "V" + (storey + 1) + "-" + side;
    Level level = levels.get(storey);
    Piece brace = Piece.member("BRACE", "Brace", mark, section, grade, from, to);
    Written written = hollow ? slotted(level, brace) : erector.member(level, brace);
    erector.describe(written, new PropertyGroup.Finish("Shop primer"));
    gusset(storey, "GP" + storey + "-" + side, footGusset(along), footCorner(start));
  }

  private Written slotted(Level level, Piece brace) {
    Written written = erector.member(level, brace);
    double wide = GUSSET + 0.0016;
    Outline slot = Outline.box("slot", -wide / 2, -0.1, wide / 2, 0.1);
    for (double at : new double[] {-0.02, brace.length() - 0.25}) {
      var solid =
          erector
              .ifc()
              .solids()
              .extrude(erector.ifc().profiles().of(slot), Frame.at(0, 0, at), 0.27);
      erector.open(written, "Slot", org.coatrun.testmodels.ifc.Body.of("SweptSolid", solid));
    }
    return written;
  }

  private static Vec3 footCorner(Vec3 start) {
    return new Vec3(-GUSSET / 2, start.y(), start.z());
  }

  /** A plate from the column's web along the brace, above the slab. */
  private static List<org.coatrun.testmodels.shape.Vec2> footGusset(Vec3 along) {
    double sign = Math.signum(along.y());
    double web = Sections.W12X87.web() / 2;
    var corners =
        new java.util.ArrayList<>(
            List.of(
                corner(sign * web, 0),
                corner(sign * 0.56, 0),
                corner(sign * 0.56, 0.46),
                corner(sign * 0.44, 0.56),
                corner(sign * web, 0.56)));
    if (sign < 0) {
      java.util.Collections.reverse(corners);
    }
    return corners;
  }

  private static org.coatrun.testmodels.shape.Vec2 corner(double y, double z) {
    return new org.coatrun.testmodels.shape.Vec2(y, z);
  }

  private void gusset(
      int storey, String mark, List<org.coatrun.testmodels.shape.Vec2> corners, Vec3 at) {
    Outline outline = new Outline("gusset " + mark, corners);
    Frame frame = new Frame(at, Vec3.Y, Vec3.X);
    fabric.plate(levels.get(storey), "Gusset plate", mark, outline, GUSSET, frame, Grade.A36);
  }
}
