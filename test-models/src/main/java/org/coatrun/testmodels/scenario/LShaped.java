package org.coatrun.testmodels.scenario;

import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.erect.Level;

/** Three storeys over an L of five by four bays with a core in the corner of the L. */
public final class LShaped implements Scenario {
  private static final int STOREYS = 3;
  private static final FloorPlan PLAN = new FloorPlan(5, 4, SteelTower.BAY, 1, 1, 1, 1, 3, 2);

  @Override
  public Titles titles() {
    return new Titles("l-shaped.ifc", "Chandlery", "Kittiwake Quay 7", "Chandlery");
  }

  @Override
  public void build(Erector erector) {
    Level below = erector.level("Level 1", 0);
    TowerFloor floors = new TowerFloor(erector, PLAN, 1);
    floors.ground(below);
    for (int i = 1; i <= STOREYS; i++) {
      Level level =
          erector.level(i == STOREYS ? "Roof" : "Level " + (i + 1), SteelTower.elevation(i));
      floors.storey(below, level, i);
      below = level;
    }
  }
}
