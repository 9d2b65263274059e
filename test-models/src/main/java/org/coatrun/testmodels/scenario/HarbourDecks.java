package org.coatrun.testmodels.scenario;

import static org.coatrun.testmodels.scenario.HarbourGrid.EDGE;
import static org.coatrun.testmodels.scenario.HarbourGrid.WALL;
import static org.coatrun.testmodels.scenario.HarbourGrid.X;
import static org.coatrun.testmodels.scenario.HarbourGrid.Y;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.testmodels.erect.Box;
import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.erect.Fabric;
import org.coatrun.testmodels.erect.FlutedDeck;
import org.coatrun.testmodels.erect.Grade;
import org.coatrun.testmodels.erect.Level;
import org.coatrun.testmodels.erect.PropertyGroup;
import org.coatrun.testmodels.erect.SlabMakeUp;
import org.coatrun.testmodels.ifc.ElementKind;
import org.coatrun.testmodels.ifc.Item;
import org.coatrun.testmodels.ifc.Written;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Vec3;
import org.coatrun.testmodels.step.Ref;

/** Slabs and decks: flat ones named as deck, one floor with real flutes, roof deck. */
final class HarbourDecks {
  private static final Outline PLATE = Outline.box("plate", -EDGE, -EDGE, X[4] + EDGE, Y[3] + EDGE);
  private static final Outline CORE =
      Outline.box("core", X[2] - WALL, Y[1] - WALL, X[3] + WALL, Y[2] + WALL);
  private static final Outline STAIR = Outline.box("stair 2", 5.09, 14.4, 7.33, 19.2);
  private final Erector erector;
  private final Fabric fabric;

  HarbourDecks(Erector erector) {
    this.erector = erector;
    this.fabric = new Fabric(erector);
  }

  void ground(Level level) {
    Outline all = Outline.box("ground", -2, -3.5, X[4] + 2, Y[3] + 4);
    fabric.slab(level, SlabMakeUp.concrete("BASESLAB", 0.15), "Slab on grade", all, 0);
  }

  /** A floor drawn as one flat slab with openings for core and stair. */
  void flat(Level level) {
    SlabMakeUp makeUp = SlabMakeUp.compositeDeck();
    Written slab = fabric.slab(level, makeUp, "Composite floor", PLATE, level.elevation());
    fabric.slabOpening(slab, "Core opening", CORE, makeUp.thickness());
    fabric.slabOpening(slab, "Stair 2 opening", STAIR, makeUp.thickness());
  }

  /** A floor of sheets with flutes along x and the concrete on them, beside core and stair. */
  void fluted(Level level) {
    Item floor =
        Item.of(ElementKind.SLAB, "FLOOR", "Composite floor", "Composite floor with flutes", "");
    Written whole = erector.bodiless(level, floor, Grade.DECK.matter());
    List<Ref> parts = new ArrayList<>();
    double right = X[4] + EDGE;
    double top = Y[3] + EDGE;
    strip(level, whole, parts, -EDGE, right, -EDGE, Y[1] - WALL);
    strip(level, whole, parts, -EDGE, X[2] - WALL, Y[1] - WALL, Y[2] + WALL);
    strip(level, whole, parts, X[3] + WALL, right, Y[1] - WALL, Y[2] + WALL);
    strip(level, whole, parts, -EDGE, right, Y[2] + WALL, 14.4);
    strip(level, whole, parts, -EDGE, 5.09, 14.4, 19.2);
    strip(level, whole, parts, 7.33, right, 14.4, 19.2);
    strip(level, whole, parts, -EDGE, right, 19.2, top);
    erector.ifc().spatial().aggregate(whole.ref(), parts);
  }

  private void strip(
      Level level, Written whole, List<Ref> parts, double x0, double x1, double y0, double y1) {
    FlutedDeck deck = FlutedDeck.composite();
    double thick = SlabMakeUp.compositeDeck().thickness();
    Frame at = new Frame(new Vec3(x0, 0, level.elevation() - thick), Vec3.Y, Vec3.X);
    Item sheet =
        Item.of(ElementKind.PART, "NOTDEFINED", "Metal deck", "Composite deck 2 in 18 ga", "");
    Written steel = fabric.part(level, whole, sheet, Grade.DECK, deck.sheet(y0, y1), x1 - x0, at);
    erector.describe(steel, new PropertyGroup.DeckMakeUp(deck.depth(), deck.pitch(), deck.sheet()));
    parts.add(steel.ref());
    Item fill =
        Item.of(ElementKind.PART, "NOTDEFINED", "Concrete fill", "Lightweight concrete", "");
    Outline concrete = deck.concrete(y0, y1, thick);
    parts.add(fabric.part(level, whole, fill, Grade.LIGHT_CONCRETE, concrete, x1 - x0, at).ref());
  }

  /** The roof: roof deck on joists north and south, composite deck in the middle row. */
  void roof(Level level) {
    double left = -EDGE;
    double right = X[4] + EDGE;
    double under = HarbourGrid.steel(HarbourGrid.ROOF) + HarbourGrid.SEAT;
    FlutedDeck deck = FlutedDeck.roof();
    Frame at = new Frame(new Vec3(left, 0, under), Vec3.Y, Vec3.X);
    Item item =
        Item.of(
            ElementKind.SLAB,
            "ROOF",
            "Roof deck south",
            "Roof deck 1 1/2 in type B galvanised",
            "");
    Outline sheet = deck.sheet(-EDGE, Y[1] - WALL);
    Written south =
        erector.element(
            level,
            item,
            Grade.DECK,
            at,
            erector.ifc().solids().straight(erector.ifc().profiles().once(sheet), right - left));
    erector.describe(south, new PropertyGroup.Finish("Galvanised G60"));
    SlabMakeUp flat = SlabMakeUp.roofDeck();
    Outline north = Outline.box("north", left, Y[2] + WALL, right, Y[3] + EDGE);
    Written plate = fabric.slab(level, flat, "Roof deck north", north, under + flat.thickness());
    erector.describe(plate, new PropertyGroup.Finish("Galvanised G60"));
    SlabMakeUp composite = SlabMakeUp.compositeDeck();
    double z = level.elevation();
    Outline west = Outline.box("west", left, Y[1] - WALL, X[2] - WALL, Y[2] + WALL);
    Outline east = Outline.box("east", X[3] + WALL, Y[1] - WALL, right, Y[2] + WALL);
    fabric.slab(level, composite, "Mechanical floor west", west, z);
    fabric.slab(level, composite, "Mechanical floor east", east, z);
  }

  /** The penthouse's roof: bare deck west of the core, concrete over the core. */
  void penthouse(Level level) {
    SlabMakeUp flat = SlabMakeUp.roofDeck();
    double steel = HarbourGrid.steel(HarbourGrid.PENTHOUSE);
    Outline west = Outline.box("west", X[1] - EDGE, Y[1] - WALL, X[2] - WALL, Y[2] + WALL);
    fabric.slab(level, flat, "Penthouse roof deck", west, steel + flat.thickness());
    SlabMakeUp slab = SlabMakeUp.concrete("ROOF", 0.2);
    fabric.slab(level, slab, "Roof over core", CORE, level.elevation() + 0.2);
  }

  /** Exterior walls below sills; full height with a loading door at the north on the ground. */
  void outside(Level level, int number) {
    double z = level.elevation();
    double high = number == 0 ? 3.4 : 0.9;
    double e = EDGE + 0.2;
    for (Box box :
        List.of(
            new Box(-e, -EDGE, z, -EDGE, Y[3] + EDGE, z + high),
            new Box(X[4] + EDGE, -EDGE, z, X[4] + e, Y[3] + EDGE, z + high),
            new Box(-e, Y[3] + EDGE, z, X[4] + e, Y[3] + e, z + high))) {
      Written wall = fabric.wall(level, "Exterior wall", Grade.GYPSUM, box);
      if (number == 0 && box.y0() > Y[3]) {
        Box gate = new Box(25, box.y0(), z, 28, box.y1(), z + 3);
        fabric.door(level, wall, box, "Loading door", gate);
      }
    }
    if (number > 0) {
      fabric.wall(
          level, "Exterior wall", Grade.GYPSUM, new Box(-e, -e, z, X[4] + e, -EDGE, z + high));
    }
  }
}
