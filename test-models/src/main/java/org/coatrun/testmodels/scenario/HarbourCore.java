package org.coatrun.testmodels.scenario;

import static org.coatrun.testmodels.scenario.HarbourGrid.WALL;
import static org.coatrun.testmodels.scenario.HarbourGrid.X;
import static org.coatrun.testmodels.scenario.HarbourGrid.Y;

import java.util.List;
import org.coatrun.testmodels.erect.Box;
import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.erect.Fabric;
import org.coatrun.testmodels.erect.Grade;
import org.coatrun.testmodels.erect.Level;
import org.coatrun.testmodels.erect.SlabMakeUp;
import org.coatrun.testmodels.facts.Matter;
import org.coatrun.testmodels.ifc.ElementKind;
import org.coatrun.testmodels.ifc.Item;
import org.coatrun.testmodels.ifc.Written;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Vec2;
import org.coatrun.testmodels.shape.Vec3;

/** The concrete core with stair, lifts, shaft and lobby; the second stair; rooms. */
final class HarbourCore {
  private static final double SLAB = 0.2;
  private static final double GOING = 0.28;
  private final Erector erector;
  private final Fabric fabric;

  HarbourCore(Erector erector) {
    this.erector = erector;
    this.fabric = new Fabric(erector);
  }

  /** Adds the walls between two levels. */
  void walls(Level low, Level high) {
    double z = low.elevation();
    double t = high.elevation();
    double w = WALL;
    door(low, "Core wall south", new Box(X[2] - w, Y[1] - w, z, X[3] + w, Y[1] + w, t), 18.3, true);
    door(low, "Core wall north", new Box(X[2] - w, Y[2] - w, z, X[3] + w, Y[2] + w, t), 18.3, true);
    wall(low, "Core wall west", new Box(X[2] - w, Y[1] + w, z, X[2] + w, Y[2] - w, t));
    wall(low, "Core wall east", new Box(X[3] - w, Y[1] + w, z, X[3] + w, Y[2] - w, t));
    door(low, "Stair wall", new Box(17.9, Y[1] + w, z, 18.1, Y[2] - w, t), 12.2, false);
    door(low, "Lift wall", new Box(19.7, Y[1] + w, z, 19.9, 11.6, t), 7.4, false);
    wall(low, "Lift wall north", new Box(19.9, 11.4, z, X[3] - w, 11.6, t));
  }

  private void wall(Level level, String name, Box box) {
    fabric.wall(level, name, Grade.CONCRETE, box);
  }

  private void door(Level level, String name, Box box, double from, boolean alongX) {
    Written wall = fabric.wall(level, name, Grade.CONCRETE, box);
    double z = box.z0();
    Box hole =
        alongX
            ? new Box(from, box.y0(), z, from + 1.1, box.y1(), z + 2.15)
            : new Box(box.x0(), from, z, box.x1(), from + 1.0, z + 2.15);
    fabric.door(level, wall, box, name + " door", hole);
  }

  /** Adds the slab inside the core with its openings. */
  void slab(Level level) {
    Outline inside = Outline.box("core", X[2] + WALL, Y[1] + WALL, X[3] - WALL, Y[2] - WALL);
    SlabMakeUp makeUp = SlabMakeUp.concrete("FLOOR", SLAB);
    Written slab = fabric.slab(level, makeUp, "Core slab", inside, level.elevation());
    fabric.slabOpening(slab, "Stair 1 opening", Outline.box("s", 15.3, 6.9, 17.7, 11.9), SLAB);
    fabric.slabOpening(slab, "Lift shaft 1", Outline.box("l", 19.9, 6.8, 22.2, 8.95), SLAB);
    fabric.slabOpening(slab, "Lift shaft 2", Outline.box("l", 19.9, 9.15, 22.2, 11.3), SLAB);
    fabric.slabOpening(slab, "Duct shaft", Outline.box("d", 20.2, 11.8, 22.2, 13.2), SLAB);
  }

  /** Adds a stair of two flights and a landing from one level to the next. */
  void stair(Level low, Level high, String name, double x, double y) {
    Item item = Item.of(ElementKind.STAIR, stairKind(), name, "Half-turn stair", "");
    Written stair = erector.bodiless(low, item, Matter.CONCRETE);
    double rise = high.elevation() - low.elevation();
    int risers = 2 * (int) Math.ceil(rise / 2 / 0.19);
    double z = low.elevation();
    double run = (risers / 2 - 1) * GOING;
    Frame up = new Frame(new Vec3(x, y, z), Vec3.Y, Vec3.X);
    Frame back =
        new Frame(new Vec3(x + 2.2, y + run, z + rise / 2), new Vec3(0, -1, 0), new Vec3(-1, 0, 0));
    Written first = flight(low, stair, name + " flight 1", risers / 2, rise / 2, up);
    Written second = flight(low, stair, name + " flight 2", risers / 2, rise / 2, back);
    Item landing = Item.of(ElementKind.SLAB, "LANDING", name + " landing", "Landing", "");
    Outline plan = Outline.box("landing", x, y + run, x + 2.2, y + run + 1.1);
    Frame at = Frame.at(0, 0, z + rise / 2 - 0.16);
    Written rest = fabric.part(low, stair, landing, Grade.CONCRETE, plan, 0.16, at);
    erector.ifc().spatial().aggregate(stair.ref(), List.of(first.ref(), second.ref(), rest.ref()));
  }

  private String stairKind() {
    return "HALF_TURN_STAIR";
  }

  private Written flight(
      Level level, Written stair, String name, int risers, double rise, Frame at) {
    double step = rise / risers;
    List<Vec2> corners = new java.util.ArrayList<>();
    corners.add(new Vec2(0, 0));
    double run = (risers - 1) * GOING;
    corners.add(new Vec2(GOING * 0.8, 0));
    corners.add(new Vec2(run, rise - step - 0.18));
    for (int i = risers - 1; i > 0; i--) {
      corners.add(new Vec2(i * GOING, i * step));
      corners.add(new Vec2((i - 1) * GOING, i * step));
    }
    Item item =
        new Item(
            ElementKind.STAIR_FLIGHT,
            "STRAIGHT",
            name,
            "Concrete flight",
            "",
            List.of((double) risers, risers - 1.0, step, GOING));
    return fabric.part(
        level, stair, item, Grade.CONCRETE, new Outline("flight", corners), 1.05, at);
  }

  /** Adds rooms and partitions of a floor. */
  void rooms(Level level, double height) {
    String n = level.name();
    double in = 0.1;
    room(level, "West office " + n, Outline.box("r", in, in, X[2] - 0.2, Y[3] - in), height);
    room(level, "East office " + n, Outline.box("r", X[3] + 0.2, in, X[4] - in, Y[3] - in), height);
    room(level, "South hall " + n, Outline.box("r", X[2] - 0.1, in, X[3] + 0.1, 6.3), height);
    room(level, "North hall " + n, Outline.box("r", X[2] - 0.1, 13.7, X[3] + 0.1, 19.9), height);
    room(level, "Lobby " + n, Outline.box("r", 18.1, 6.65, 19.7, 13.35), height);
    room(level, "Stair 1 " + n, Outline.box("r", 15.15, 6.65, 17.9, 13.35), height);
    double z = level.elevation();
    fabric.wall(level, "Partition", Grade.GYPSUM, new Box(0, 5.2, z, 5.0, 5.32, z + 2.8));
    Box cross = new Box(5.0, 0, z, 5.12, 5.32, z + 2.8);
    Written wall = fabric.wall(level, "Partition", Grade.GYPSUM, cross);
    fabric.door(level, wall, cross, "Room door", new Box(5.0, 2.0, z, 5.12, 3.0, z + 2.1));
  }

  private void room(Level level, String name, Outline plan, double height) {
    fabric.space(level, name, name, plan, height);
  }
}
