package org.coatrun.routing.line;

import java.util.List;
import org.coatrun.routing.siting.CoverProblem;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.WorkCell;

/**
 * A request in the bare numbers of the covering problem, and what these numbers stand for.
 *
 * @param ways whose options are those of the problem, in the same order
 * @param floorClasses whose floors are those of the problem, in the same order
 */
record LineModel(LineWays ways, List<FloorClass> floorClasses, CoverProblem problem) {

  static LineModel of(
      LineRequest request, Sites sites, Candidates candidates, List<WorkCell> cells) {
    var ways = new LineWays(request, sites, candidates);
    List<FloorClass> classes = new FloorClasses(request, sites, candidates, cells, ways).all();
    CoverProblem problem =
        new CoverPricing(request, sites, cells, ways, classes).problem(candidates.spots());
    return new LineModel(ways, classes, problem);
  }

  List<LineOption> options() {
    return ways.options();
  }
}
