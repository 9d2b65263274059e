package org.coatrun.testmodels.scenario;

import org.coatrun.testmodels.erect.Box;
import org.coatrun.testmodels.erect.Fabric;
import org.coatrun.testmodels.erect.Grade;
import org.coatrun.testmodels.erect.Level;
import org.coatrun.testmodels.erect.SlabMakeUp;
import org.coatrun.testmodels.ifc.Written;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.shape.Vec2;

/** The concrete core: four walls with doors, a slab with a stair, lifts and a shaft, and spaces. */
final class TowerCore {
  static final double HALF_WALL = 0.15;
  private static final double DOOR_WIDTH = 1.2;
  private static final double DOOR_HEIGHT = 2.2;
  private static final double SLAB = 0.2;

  private final Fabric fabric;
  private final FloorPlan plan;
  private final double x0;
  private final double y0;
  private final double x1;
  private final double y1;

  TowerCore(Fabric fabric, FloorPlan plan) {
    this.fabric = fabric;
    this.plan = plan;
    this.x0 = plan.coreX() * plan.bay();
    this.y0 = plan.coreY() * plan.bay();
    this.x1 = x0 + plan.coreBaysX() * plan.bay();
    this.y1 = y0 + plan.coreBaysY() * plan.bay();
  }

  /** Returns what is left of a bay's outline beside the core's walls. */
  Outline clear(Outline bay, int x, int y) {
    Vec2 low = bay.corners().get(0);
    Vec2 high = bay.corners().get(2);
    return Outline.box(
        bay.name(),
        low.x() + (plan.isCore(x - 1, y) ? HALF_WALL : 0),
        low.y() + (plan.isCore(x, y - 1) ? HALF_WALL : 0),
        high.x() - (plan.isCore(x + 1, y) ? HALF_WALL : 0),
        high.y() - (plan.isCore(x, y + 1) ? HALF_WALL : 0));
  }

  /** Adds the walls on one level, the slab of the next, and the spaces between. */
  void storey(Level below, Level level) {
    spaces(below, level);
    if (plan.coreBaysX() == 0) {
      return;
    }
    double h = HALF_WALL;
    wall(below, level, "Core wall south", x0 - h, y0 - h, x1 + h, y0 + h, true);
    wall(below, level, "Core wall north", x0 - h, y1 - h, x1 + h, y1 + h, true);
    wall(below, level, "Core wall west", x0 - h, y0 + h, x0 + h, y1 - h, false);
    wall(below, level, "Core wall east", x1 - h, y0 + h, x1 + h, y1 - h, false);
    Outline inside = Outline.box("core", x0 + h, y0 + h, x1 - h, y1 - h);
    SlabMakeUp makeUp = SlabMakeUp.concrete("FLOOR", SLAB);
    Written slab = fabric.slab(level, makeUp, "Core slab", inside, level.elevation());
    opening(slab, "Stair opening", x0 + 0.5, y0 + 0.6, 2.5, 5.4);
    opening(slab, "Lift shaft", x1 - 2.7, y0 + 0.6, 2.2, 2.4);
    opening(slab, "Shaft", x1 - 2.7, y0 + 4.6, 1.2, 1.2);
  }

  private void opening(Written slab, String name, double x, double y, double dx, double dy) {
    fabric.slabOpening(slab, name, Outline.box(name, x, y, x + dx, y + dy), SLAB);
  }

  private void wall(
      Level below,
      Level level,
      String name,
      double ax,
      double ay,
      double bx,
      double by,
      boolean door) {
    double z = below.elevation();
    Box box = new Box(ax, ay, z, bx, by, level.elevation());
    Written wall = fabric.wall(below, name, Grade.CONCRETE, box);
    if (door) {
      double mid = x0 + 3.6;
      Box hole = new Box(mid, ay, z, mid + DOOR_WIDTH, by, z + DOOR_HEIGHT);
      fabric.door(below, wall, box, "Core door", hole);
    }
  }

  private void spaces(Level below, Level level) {
    double height = level.elevation() - below.elevation() - 1.0;
    double right = plan.baysX() * plan.bay();
    double top = plan.baysY() * plan.bay();
    String story = below.name();
    if (plan.cutX() > 0) {
      double cut = top - plan.cutY() * plan.bay();
      space(below, "Office " + story, Outline.box("office", 0, 0, right, cut), height);
      return;
    }
    boolean core = plan.coreBaysX() > 0;
    double south = core ? y0 - HALF_WALL : top;
    space(below, "Office south " + story, Outline.box("south", 0, 0, right, south), height);
    if (core) {
      double from = y1 + HALF_WALL;
      space(below, "Office north " + story, Outline.box("north", 0, from, right, top), height);
    }
  }

  private void space(Level level, String name, Outline plan2, double height) {
    fabric.space(level, name, name, plan2, height);
  }
}
