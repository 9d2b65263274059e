package org.coatrun.testmodels.scenario;

import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.erect.Level;

/** A single storey of many bays: 16 by 10 bays of 7.5 m, 120 m by 75 m, without a core. */
public final class Hall implements Scenario {
  private static final double ROOF = 8.0;
  private static final FloorPlan PLAN = new FloorPlan(16, 10, SteelTower.BAY, 0, 0, 0, 0, 0, 0);

  @Override
  public Titles titles() {
    return new Titles("hall.ifc", "Net loft", "Kittiwake Quay 20", "Net loft");
  }

  @Override
  public void build(Erector erector) {
    Level ground = erector.level("Ground floor", 0);
    Level roof = erector.level("Roof", ROOF);
    TowerFloor floors = new TowerFloor(erector, PLAN, 0);
    floors.ground(ground);
    floors.storey(ground, roof, 1);
  }
}
