package org.coatrun.testmodels.scenario;

import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.erect.Level;

/**
 * An office tower of any height: steel frame with connections, decks, a concrete core with stairs,
 * lifts and a shaft.
 *
 * <p>Each floor is written and forgotten before the next, so that memory does not grow with the
 * file. Bays are 7.5 m; floors are 4 m apart, the first 5 m.
 */
public final class SteelTower implements Scenario {
  static final double BAY = 7.5;
  static final double FIRST = 5.0;
  static final double STOREY = 4.0;

  private final TowerSize size;
  private final FloorPlan plan;

  /** Makes a tower of a size. */
  public SteelTower(TowerSize size) {
    this.size = size;
    this.plan = FloorPlan.tower(size.baysX(), size.baysY(), BAY);
  }

  @Override
  public Titles titles() {
    return new Titles("tower.ifc", "Lighthouse Tower", "Kittiwake Quay 11", "Lighthouse Tower");
  }

  @Override
  public void build(Erector erector) {
    Level below = erector.level("Level 1", 0);
    TowerFloor floors = new TowerFloor(erector, plan, size.detail());
    floors.ground(below);
    for (int i = 1; i <= size.storeys(); i++) {
      boolean roof = i == size.storeys();
      Level level = erector.level(roof ? "Roof" : "Level " + (i + 1), elevation(i));
      floors.storey(below, level, i);
      erector.settle();
      below = level;
    }
  }

  /** Returns the height of a floor in metres. */
  static double elevation(int floor) {
    return floor == 0 ? 0 : FIRST + (floor - 1) * STOREY;
  }
}
