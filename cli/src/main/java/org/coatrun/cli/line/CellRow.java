package org.coatrun.cli.line;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.RouteResult;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.line.WorkCell;

/**
 * A place of work with its line.
 *
 * @param number from 1
 * @param storey name of the floor it is sprayed from
 * @param setUp from which it is sprayed; empty where no line leads there
 */
record CellRow(
    int number, String storey, WorkCell cell, RouteResult result, Optional<SetUp> setUp) {

  /** One for each cell of the plan, in its order. */
  static List<CellRow> of(LinePlan plan) {
    Map<Integer, SetUp> setUps = new HashMap<>();
    for (FloorPlan floor : plan.floors()) {
      floor.setUps().forEach(s -> s.cells().forEach(c -> setUps.put(c, s)));
    }
    var rows = new ArrayList<CellRow>();
    for (int c = 0; c < plan.cells().size(); c++) {
      WorkCell cell = plan.cells().get(c);
      rows.add(
          new CellRow(
              c + 1,
              plan.floors().get(cell.floor()).outline().storey(),
              cell,
              plan.routes().get(c),
              Optional.ofNullable(setUps.get(c))));
    }
    return rows;
  }

  Optional<Route> route() {
    return result instanceof Route r ? Optional.of(r) : Optional.empty();
  }

  Optional<NoRoute> miss() {
    return result instanceof NoRoute n ? Optional.of(n) : Optional.empty();
  }
}
