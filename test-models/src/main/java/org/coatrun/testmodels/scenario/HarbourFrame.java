package org.coatrun.testmodels.scenario;

import static org.coatrun.testmodels.scenario.HarbourGrid.GAP;
import static org.coatrun.testmodels.scenario.HarbourGrid.X;
import static org.coatrun.testmodels.scenario.HarbourGrid.Y;

import org.coatrun.testmodels.erect.Cope;
import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.erect.Fabric;
import org.coatrun.testmodels.erect.Form;
import org.coatrun.testmodels.erect.Grade;
import org.coatrun.testmodels.erect.Level;
import org.coatrun.testmodels.erect.Piece;
import org.coatrun.testmodels.erect.PropertyGroup;
import org.coatrun.testmodels.ifc.ElementKind;
import org.coatrun.testmodels.ifc.Written;
import org.coatrun.testmodels.section.IShape;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.section.Sections;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Vec3;

/** Girders along x, beams along y and their connection plates, floor by floor. */
final class HarbourFrame {
  private static final double END_PLATE = 0.012;
  private final Erector erector;
  private final Fabric fabric;

  HarbourFrame(Erector erector) {
    this.erector = erector;
    this.fabric = new Fabric(erector);
  }

  /** Frames one floor. */
  void floor(Level level, int number) {
    for (int y = 0; y < Y.length; y++) {
      for (int x = 0; x < X.length - 1; x++) {
        if (!(x == 2 && (y == 1 || y == 2))) {
          girder(level, number, x, y);
        }
      }
    }
    for (int y = 0; y < Y.length - 1; y++) {
      for (int x = 0; x < X.length; x++) {
        if (!(y == 1 && (x == 2 || x == 3))) {
          columnLine(level, number, x, y);
        }
      }
      boolean joists = number == HarbourGrid.ROOF && y != 1;
      for (int x = 0; x < X.length - 1 && !joists; x++) {
        if (!HarbourGrid.isCoreBay(x, y)) {
          infill(level, number, x, y, 1);
          infill(level, number, x, y, 2);
        }
      }
    }
  }

  /** Returns the girder's section: deeper inside than at the edge. */
  static IShape girderSection(int x, int y) {
    if (y == 0 || y == 3) {
      return x == 0 ? Sections.W21X44 : Sections.W18X35;
    }
    return x == 0 ? Sections.W24X76 : Sections.W24X55;
  }

  private void girder(Level level, int number, int x, int y) {
    double steel = HarbourGrid.steel(number);
    double left = X[x] + HarbourGrid.flangeFace(x, y, number);
    double right = X[x + 1] - HarbourGrid.flangeFace(x + 1, y, number);
    Vec3 from = new Vec3(left + GAP, Y[y], steel);
    Vec3 to = new Vec3(right - GAP, Y[y], steel);
    IShape section = girderSection(x, y);
    String mark = "G" + number + "-" + HarbourGrid.point(x, y);
    Piece girder = Piece.beam(mark, section, from, to);
    Written written = erector.member(level, girder);
    erector.describe(written, new PropertyGroup.Rating(ElementKind.BEAM, "2 h"));
    erector.quantify(written, girder);
    if (number % 2 == 1) {
      endPlate(level, mark + "-P1", section, new Vec3(left, Y[y], steel));
      endPlate(level, mark + "-P2", section, new Vec3(right - END_PLATE, Y[y], steel));
    }
  }

  /** An end plate as thick as the gap: it touches the column and the beam's end. */
  private void endPlate(Level level, String mark, IShape s, Vec3 top) {
    double half = s.width() / 2;
    double low = -s.depth();
    Outline outline = Outline.box("end plate " + s.name(), -half, low, half, 0);
    Frame at = new Frame(top, Vec3.Y, Vec3.X);
    fabric.plate(level, "End plate", mark, outline, END_PLATE, at, Grade.A36);
  }

  private void columnLine(Level level, int number, int x, int y) {
    boolean raised = number == HarbourGrid.ROOF && y != 1;
    double steel = HarbourGrid.steel(number) + (raised ? HarbourGrid.SEAT : 0);
    double low = Y[y] + HarbourGrid.webFace(x, y, number) + GAP;
    double high = Y[y + 1] - HarbourGrid.webFace(x, y + 1, number) - GAP;
    Vec3 from = new Vec3(X[x], low, steel);
    Vec3 to = new Vec3(X[x], high, steel);
    IShape section = y == 1 ? Sections.W16X26 : Sections.W12X26;
    Piece beam = Piece.beam("L" + number + "-" + HarbourGrid.point(x, y), section, from, to);
    Written written = erector.member(level, beam);
    erector.describe(written, new PropertyGroup.Rating(ElementKind.BEAM, "2 h"));
    finPlate(level, beam, low, true);
    finPlate(level, beam, high, false);
  }

  /** A plate on the column's web or the wall that lies against the beam's web. */
  private void finPlate(Level level, Piece beam, double end, boolean start) {
    IShape s = (IShape) beam.section();
    double from = start ? end - GAP : end - 0.09;
    double high = -s.flange() - s.fillet() - 0.01;
    double low = -s.depth() + s.flange() + s.fillet() + 0.01;
    Outline outline = Outline.box("fin " + s.name(), 0, low, 0.09 + GAP, high);
    Vec3 corner = new Vec3(beam.start().x() + s.web() / 2, from, beam.start().z());
    Frame at = new Frame(corner, Vec3.Y, Vec3.X);
    String mark = beam.mark() + (start ? "-F1" : "-F2");
    fabric.plate(level, "Fin plate", mark, outline, 0.0095, at, Grade.A36);
  }

  private void infill(Level level, int number, int x, int y, int third) {
    boolean wallLow = x == 2 && y == 2;
    boolean wallHigh = x == 2 && y == 0;
    double steel = HarbourGrid.steel(number);
    double at = X[x] + third * 2.5;
    IShape low = girderSection(x, y);
    IShape high = girderSection(x, y + 1);
    double start = Y[y] + GAP + (wallLow ? HarbourGrid.WALL : low.web() / 2);
    double end = Y[y + 1] - GAP - (wallHigh ? HarbourGrid.WALL : high.web() / 2);
    String mark = "B" + number + "-" + HarbourGrid.point(x, y) + "-" + third;
    IShape section = y == 1 ? Sections.W16X26 : third == 1 ? Sections.W14X22 : Sections.W12X14;
    Piece beam = Piece.beam(mark, section, new Vec3(at, start, steel), new Vec3(at, end, steel));
    Piece coped = beam.coped(wallLow ? Cope.NONE : under(low), wallHigh ? Cope.NONE : under(high));
    Form form = x == 2 ? (wallLow ? Form.MIRRORED : Form.MAPPED) : form(number, x);
    boolean meshed = form == Form.BREP || form == Form.TRIANGLES;
    Piece made = meshed ? shortened(beam, low, high) : coped;
    Written written = erector.member(level, made.as(form));
    erector.describe(written, new PropertyGroup.Finish(third == 1 ? "Shop primer" : "None"));
  }

  /** A beam that stops short of the flanges, so that it needs no cope. */
  private static Piece shortened(Piece beam, IShape low, IShape high) {
    Vec3 start = beam.start().plus(new Vec3(0, (low.width() - low.web()) / 2, 0));
    Vec3 end = beam.end().minus(new Vec3(0, (high.width() - high.web()) / 2, 0));
    return Piece.beam(beam.mark(), beam.section(), start, end);
  }

  private static Form form(int number, int x) {
    return switch (number) {
      case 1 -> Form.HALF_SPACES;
      case 2 -> Form.BOXES;
      case 3 -> Form.OPENINGS;
      case 4 -> x == 0 ? Form.BREP : x == 3 ? Form.TRIANGLES : Form.HALF_SPACES;
      default -> Form.MAPPED;
    };
  }

  private static Cope under(IShape girder) {
    double length = (girder.width() - girder.web()) / 2;
    return new Cope(length, girder.flange() + girder.fillet() + 0.012);
  }
}
