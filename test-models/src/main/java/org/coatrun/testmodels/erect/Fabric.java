package org.coatrun.testmodels.erect;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coatrun.testmodels.facts.Matter;
import org.coatrun.testmodels.ifc.Body;
import org.coatrun.testmodels.ifc.ElementKind;
import org.coatrun.testmodels.ifc.IfcWriter;
import org.coatrun.testmodels.ifc.Item;
import org.coatrun.testmodels.ifc.Written;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.section.Section;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.step.Ref;

/** Adds what is not a straight member: plates, slabs, walls, doors, stairs and spaces. */
public final class Fabric {
  private static final double THROUGH = 0.05;
  private final Erector erector;
  private final IfcWriter ifc;

  /** Works on the erector's building. */
  public Fabric(Erector erector) {
    this.erector = erector;
    this.ifc = erector.ifc();
  }

  /** Adds a plate: an outline in the frame's plane, as thick as said along the frame's z. */
  public Written plate(
      Level level, String name, String mark, Section outline, double thick, Frame at, Grade grade) {
    Item item = Item.of(ElementKind.PLATE, "SHEET", name, title(thick), mark);
    OptionalDouble area = OptionalDouble.of(2 * outline.area() + outline.perimeter() * thick);
    OptionalDouble volume = OptionalDouble.of(outline.area() * thick);
    Body body = ifc.solids().straight(ifc.profiles().of(outline), thick);
    return erector.element(level, item, grade, at, body, area, volume);
  }

  private static String title(double thick) {
    return "PL " + Math.round(thick * 1000) + " mm";
  }

  /** Adds a slab between its top and its thickness below; layers say what it is made of. */
  public Written slab(Level level, SlabMakeUp makeUp, String name, Outline plan, double top) {
    double thick = makeUp.thickness();
    Item item = Item.of(makeUp.kind(), makeUp.predefined(), name, makeUp.title(), "");
    Frame at = Frame.at(0, 0, top - thick);
    Ref shape = ifc.products().shape(ifc.solids().straight(ifc.profiles().once(plan), thick));
    Ref parent = level.storey().placement();
    Written slab = ifc.products().add(item, parent, level.inside(at), shape);
    level.contain(slab.ref());
    Groups groups = erector.groups();
    Ref type = groups.type(makeUp.kind(), makeUp.predefined(), makeUp.title());
    groups.typed(type, slab.ref());
    groups.madeOf(layers(makeUp), slab.ref());
    OptionalDouble none = OptionalDouble.empty();
    erector.record(slab, level, item, makeUp.matter(), "SweptSolid", none, none);
    return slab;
  }

  private final java.util.Map<SlabMakeUp, Ref> layerSets = new java.util.LinkedHashMap<>();

  private Ref layers(SlabMakeUp makeUp) {
    Ref known = layerSets.get(makeUp);
    if (known == null) {
      Map<String, Double> layers = makeUp.layers();
      known = ifc.materials().layers(makeUp.title(), layers, makeUp.category());
      layerSets.put(makeUp, known);
    }
    return known;
  }

  /** Cuts an opening through a slab whose frame lies at its underside. */
  public void slabOpening(Written slab, String name, Outline plan, double thickness) {
    Ref profile = ifc.profiles().once(plan);
    Frame below = Frame.at(0, 0, -THROUGH);
    Ref solid = ifc.solids().extrude(profile, below, thickness + 2 * THROUGH);
    erector.open(slab, name, Body.of("SweptSolid", solid));
  }

  /** Adds a block of a wall or the like. */
  public Written block(Level level, Item item, Grade grade, Box box) {
    Body body = ifc.solids().straight(ifc.profiles().once(box.plan()), box.height());
    return erector.element(level, item, grade, box.frame(), body, box.area(), box.volume());
  }

  /** Adds a wall. */
  public Written wall(Level level, String name, Grade grade, Box box) {
    Item item = Item.of(ElementKind.WALL, "STANDARD", name, name, "");
    Body body = ifc.solids().straight(ifc.profiles().once(box.plan()), box.height());
    OptionalDouble none = OptionalDouble.empty();
    return erector.element(level, item, grade, box.frame(), body, none, none);
  }

  /** Cuts an opening into a wall and hangs a door in it; the hole is given as a block. */
  public void door(Level level, Written wall, Box wallBox, String name, Box hole) {
    Item opening = Item.of(ElementKind.OPENING, "OPENING", name + " opening", "", "");
    Box local = hole.seenFrom(wallBox);
    Ref cut = ifc.products().shape(solid(local));
    Written void1 = ifc.products().add(opening, wall.placement(), local.frame(), cut);
    double wide = Math.max(hole.x1() - hole.x0(), hole.y1() - hole.y0());
    Item leaf = new Item(ElementKind.DOOR, "DOOR", name, "Door", "", List.of(hole.height(), wide));
    Box panel = leaf(hole, wallBox).seenFrom(hole);
    Ref shape = ifc.products().shape(solid(panel));
    Written door = ifc.products().add(leaf, void1.placement(), panel.frame(), shape);
    level.contain(door.ref());
    ifc.spatial().voids(wall.ref(), void1.ref(), Optional.of(door.ref()));
    OptionalDouble none = OptionalDouble.empty();
    erector.record(door, level, leaf, Matter.OTHER, "SweptSolid", none, none);
  }

  private Body solid(Box box) {
    return ifc.solids().straight(ifc.profiles().once(box.plan()), box.height());
  }

  private static Box leaf(Box hole, Box wall) {
    boolean alongX = wall.x1() - wall.x0() > wall.y1() - wall.y0();
    double half = 0.025;
    double mx = (wall.x0() + wall.x1()) / 2;
    double my = (wall.y0() + wall.y1()) / 2;
    return alongX
        ? new Box(hole.x0(), my - half, hole.z0(), hole.x1(), my + half, hole.z1())
        : new Box(mx - half, hole.y0(), hole.z0(), mx + half, hole.y1(), hole.z1());
  }

  /** Adds a space that stands on the storey's floor. */
  public void space(Level level, String name, String longName, Outline plan, double height) {
    level.add(ifc.spatial().space(level.storey(), name, longName, plan, height).ref());
  }

  /** Adds a part of a whole whose frame is that of the storey: an outline along the frame's z. */
  public Written part(
      Level level,
      Written whole,
      Item item,
      Grade grade,
      Outline outline,
      double length,
      Frame at) {
    Body body = ifc.solids().straight(ifc.profiles().once(outline), length);
    Ref shape = ifc.products().shape(body);
    Written part = ifc.products().add(item, whole.placement(), level.inside(at), shape);
    erector.groups().madeOf(grade, part.ref());
    double area = 2 * outline.area() + outline.perimeter() * length;
    OptionalDouble volume = OptionalDouble.of(outline.area() * length);
    erector.record(part, level, item, grade.matter(), body.type(), OptionalDouble.of(area), volume);
    return part;
  }
}
