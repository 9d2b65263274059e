package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.RouteResult;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.units.Length;

/** For each cell its line, or why there is none. */
final class CellRoutes {

  private final LineModel model;
  private final Candidates candidates;
  private final RouteBuilder builder;
  private final Misses misses;

  CellRoutes(LineRequest request, Sites sites, LineModel model, Candidates candidates) {
    this.model = model;
    this.candidates = candidates;
    builder = new RouteBuilder(request, sites, model);
    misses = new Misses(request, sites, model, candidates.spots(), candidates.risers());
  }

  /**
   * @param used indices of the machine spots in use; a miss is looked for from these
   */
  List<RouteResult> of(List<WorkCell> cells, List<Assignment> assigned, List<Integer> used) {
    var routes = new ArrayList<RouteResult>();
    for (int c = 0; c < cells.size(); c++) {
      routes.add(route(cells.get(c), assigned.get(c), used));
    }
    return routes;
  }

  private RouteResult route(WorkCell cell, Assignment a, List<Integer> used) {
    if (a.reached()) {
      LineOption option = model.options().get(a.option());
      FloorClass on = model.floorClasses().get(a.floorClass());
      return builder.route(option, on, cell.floor(), a.outlet(), cell.at());
    }
    int spots = candidates.spots().size();
    if (spots == 0) {
      String sentence = "there is no place for a machine";
      return new NoRoute(NoRoute.Limit.NO_MACHINE, Length.ZERO, sentence);
    }
    List<Integer> by = used.isEmpty() ? IntStream.range(0, spots).boxed().toList() : used;
    return misses.of(cell, model.floorClasses().get(a.floorClass()), by);
  }
}
