package org.coatrun.testmodels.scenario;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.erect.Level;

/**
 * The ferry terminal offices: five storeys and a penthouse on a mechanical roof, 30 m by 20 m.
 *
 * <p>The floor of Level 3 is drawn with the real flutes of its deck, the others as flat slabs that
 * are named so. Copes come as half-spaces, as boxes and as openings on different floors; some beams
 * are mapped, mirrored, of flat faces or of triangles.
 */
public final class DemonstrationBuilding implements Scenario {
  private static final int FLUTED = 2;

  @Override
  public Titles titles() {
    String name = "Ferry Terminal Offices";
    return new Titles("harbour-office.ifc", name, "Kittiwake Quay 4, Marrowhaven", name);
  }

  @Override
  public void build(Erector erector) {
    List<Level> levels = new ArrayList<>();
    for (int i = 0; i < HarbourGrid.LEVELS.length; i++) {
      levels.add(erector.level(HarbourGrid.NAMES.get(i), HarbourGrid.LEVELS[i]));
    }
    steel(erector, levels);
    fabric(erector, levels);
  }

  private static void steel(Erector erector, List<Level> levels) {
    HarbourColumns columns = new HarbourColumns(erector, levels);
    columns.columns();
    columns.braces();
    HarbourFrame frame = new HarbourFrame(erector);
    for (int i = 1; i <= HarbourGrid.ROOF; i++) {
      frame.floor(levels.get(i), i);
    }
    HarbourExtras extras = new HarbourExtras(erector);
    extras.joists(levels.get(HarbourGrid.ROOF));
    extras.penthouse(levels.get(HarbourGrid.PENTHOUSE));
    extras.outriggers(levels.get(HarbourGrid.ROOF));
    extras.canopy(levels.get(0), levels.get(1));
    extras.odds(levels.get(0));
  }

  private static void fabric(Erector erector, List<Level> levels) {
    HarbourDecks decks = new HarbourDecks(erector);
    HarbourCore core = new HarbourCore(erector);
    decks.ground(levels.get(0));
    for (int i = 0; i < HarbourGrid.PENTHOUSE; i++) {
      Level level = levels.get(i);
      core.walls(level, levels.get(i + 1));
      if (i < HarbourGrid.ROOF) {
        core.rooms(level, HarbourGrid.LEVELS[i + 1] - HarbourGrid.LEVELS[i] - 0.9);
        core.stair(level, levels.get(i + 1), "Stair 1", 15.35, 7.0);
        decks.outside(level, i);
      }
      if (i > 0) {
        core.slab(level);
      }
      if (i < HarbourGrid.ROOF - 1) {
        core.stair(level, levels.get(i + 1), "Stair 2", 5.11, 14.5);
      }
      if (i > 0 && i < HarbourGrid.ROOF) {
        floor(decks, level, i);
      }
    }
    decks.roof(levels.get(HarbourGrid.ROOF));
    decks.penthouse(levels.get(HarbourGrid.PENTHOUSE));
  }

  private static void floor(HarbourDecks decks, Level level, int number) {
    if (number == FLUTED) {
      decks.fluted(level);
    } else {
      decks.flat(level);
    }
  }
}
