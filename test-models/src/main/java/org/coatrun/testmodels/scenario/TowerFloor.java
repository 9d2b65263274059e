package org.coatrun.testmodels.scenario;

import org.coatrun.testmodels.erect.Cope;
import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.erect.Fabric;
import org.coatrun.testmodels.erect.Form;
import org.coatrun.testmodels.erect.Grade;
import org.coatrun.testmodels.erect.Level;
import org.coatrun.testmodels.erect.Piece;
import org.coatrun.testmodels.erect.SlabMakeUp;
import org.coatrun.testmodels.ifc.Written;
import org.coatrun.testmodels.section.IShape;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.section.Sections;
import org.coatrun.testmodels.shape.Vec3;

/** The steel of one floor over a plan: columns below it, girders, beams, slabs by bay. */
final class TowerFloor {
  private static final double GAP = 0.012;
  private static final IShape GIRDER = Sections.W21X44;
  private static final IShape BEAM = Sections.W16X26;

  private final Erector erector;
  private final Fabric fabric;
  private final FloorPlan plan;
  private final TowerCore core;
  private final TowerDetail detail;
  private final double bay;

  TowerFloor(Erector erector, FloorPlan plan, int plates) {
    this.erector = erector;
    this.fabric = new Fabric(erector);
    this.plan = plan;
    this.bay = plan.bay();
    this.core = new TowerCore(fabric, plan);
    this.detail = new TowerDetail(erector, plates);
  }

  /** Adds the ground floor. */
  void ground(Level level) {
    Outline all = Outline.box("ground", -2, -2, plan.baysX() * bay + 2, plan.baysY() * bay + 2);
    fabric.slab(level, SlabMakeUp.concrete("BASESLAB", 0.2), "Slab on grade", all, 0);
  }

  /** Adds what stands on one level and carries the next. */
  void storey(Level below, Level level, int number) {
    double steel = level.elevation() - SlabMakeUp.compositeDeck().thickness();
    columns(below, steel, number);
    for (int y = 0; y <= plan.baysY(); y++) {
      for (int x = 0; x <= plan.baysX(); x++) {
        alongX(level, x, y, steel, number);
        alongY(level, x, y, steel, number);
        deck(level, x, y);
      }
    }
    core.storey(below, level);
  }

  private void columns(Level below, double steel, int number) {
    double foot = number == 1 ? 0 : below.elevation() - SlabMakeUp.compositeDeck().thickness();
    for (int y = 0; y <= plan.baysY(); y++) {
      for (int x = 0; x <= plan.baysX(); x++) {
        if (plan.hasColumn(x, y)) {
          Vec3 from = new Vec3(x * bay, y * bay, foot);
          Vec3 to = new Vec3(x * bay, y * bay, steel);
          String mark = "C" + number + "-" + x + "-" + y;
          IShape section = column();
          Piece column = Piece.column(mark, section, Grade.A992, from, to, Vec3.X);
          detail.column(below, erector.member(below, column), column);
        }
      }
    }
  }

  private static IShape column() {
    return Sections.W14X120;
  }

  private void alongX(Level level, int x, int y, double steel, int number) {
    if (!plan.hasDeck(x, y) && !plan.hasDeck(x, y - 1)) {
      return;
    }
    if (plan.isCore(x, y) || plan.isCore(x, y - 1)) {
      return;
    }
    double start = x * bay + end(x, y, column().depth() / 2);
    double finish = (x + 1) * bay - end(x + 1, y, column().depth() / 2);
    Vec3 from = new Vec3(start, y * bay, steel);
    Vec3 to = new Vec3(finish, y * bay, steel);
    Piece girder = Piece.beam("G" + number + "-" + x + "-" + y, GIRDER, from, to);
    detail.beam(level, erector.member(level, girder), girder);
  }

  private double end(int x, int y, double face) {
    return (plan.hasColumn(x, y) ? face : TowerCore.HALF_WALL) + GAP;
  }

  private void alongY(Level level, int x, int y, double steel, int number) {
    boolean onLine = plan.hasDeck(x, y) || plan.hasDeck(x - 1, y);
    boolean wall = plan.isCore(x, y) || plan.isCore(x - 1, y);
    if (onLine && !wall) {
      double start = y * bay + end(x, y, column().web() / 2);
      double finish = (y + 1) * bay - end(x, y + 1, column().web() / 2);
      Vec3 from = new Vec3(x * bay, start, steel);
      Vec3 to = new Vec3(x * bay, finish, steel);
      Piece beam = Piece.beam("L" + number + "-" + x + "-" + y, BEAM, from, to);
      detail.beam(level, erector.member(level, beam), beam);
    }
    if (plan.hasDeck(x, y)) {
      infill(level, x, y, steel, number, 1);
      infill(level, x, y, steel, number, 2);
    }
  }

  private void infill(Level level, int x, int y, double steel, int number, int third) {
    double at = (x + third / 3.0) * bay;
    boolean wallBelow = plan.isCore(x, y - 1);
    boolean wallAbove = plan.isCore(x, y + 1);
    double web = GIRDER.web() / 2 + GAP;
    double face = TowerCore.HALF_WALL + GAP;
    Vec3 from = new Vec3(at, y * bay + (wallBelow ? face : web), steel);
    Vec3 to = new Vec3(at, (y + 1) * bay - (wallAbove ? face : web), steel);
    double length = (GIRDER.width() - GIRDER.web()) / 2;
    Cope cope = new Cope(length, GIRDER.flange() + GIRDER.fillet() + 0.01);
    Cope start = wallBelow ? Cope.NONE : cope;
    Cope end = wallAbove ? Cope.NONE : cope;
    String mark = "B" + number + "-" + x + "-" + y + "-" + third;
    Piece beam = Piece.beam(mark, BEAM, from, to);
    Piece formed = third == 2 && x % 4 == 3 ? beam.as(Form.BREP) : beam.coped(start, end);
    detail.beam(level, erector.member(level, formed), formed);
  }

  private void deck(Level level, int x, int y) {
    if (!plan.hasDeck(x, y)) {
      return;
    }
    Outline bayPlan = Outline.box("bay", x * bay, y * bay, (x + 1) * bay, (y + 1) * bay);
    SlabMakeUp makeUp = SlabMakeUp.compositeDeck();
    Outline clear = core.clear(bayPlan, x, y);
    Written slab = fabric.slab(level, makeUp, "Floor " + x + "/" + y, clear, level.elevation());
    if (x == 0 && y == 0) {
      double from = bay / 3 + 0.2;
      Outline stair = Outline.box("stair", from, 0.8, from + 2.1, 5.8);
      fabric.slabOpening(slab, "Stair opening", stair, makeUp.thickness());
    }
  }
}
