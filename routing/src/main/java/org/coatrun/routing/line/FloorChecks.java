package org.coatrun.routing.line;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coatrun.shared.line.FloorCheck;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.units.Length;

/** The engineer's sheets of all floors to which a line leads. */
final class FloorChecks {

  private final LineRequest request;
  private final LineModel model;
  private final List<MachineSpot> spots;
  private final List<WorkCell> cells;
  private final List<Assignment> assigned;
  private final List<Optional<Route>> routes;
  private final FloorChecker checker;

  FloorChecks(
      LineRequest request,
      LineModel model,
      List<MachineSpot> spots,
      List<WorkCell> cells,
      List<Assignment> assigned,
      List<Optional<Route>> routes) {
    this.request = request;
    this.model = model;
    this.spots = spots;
    this.cells = cells;
    this.assigned = assigned;
    this.routes = routes;
    this.checker = new FloorChecker(request);
  }

  /** The sheet of a floor with these cells; empty where no line leads to any of them. */
  Optional<FloorCheck> of(int floor, List<Integer> here) {
    List<Integer> reached = here.stream().filter(c -> assigned.get(c).reached()).toList();
    if (reached.isEmpty()) {
      return Optional.empty();
    }
    MachineSpot spot =
        reached.stream()
            .map(c -> spots.get(model.options().get(assigned.get(c).option()).spot()))
            .min(Comparator.comparingInt(MachineSpot::floor).thenComparing(MachineSpot::name))
            .orElseThrow();
    List<Route> lines = reached.stream().map(c -> routes.get(c).orElseThrow()).toList();
    Length highest =
        reached.stream()
            .map(c -> cells.get(c).highest())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    return Optional.of(checker.check(floor, spot, lines, byHose(floor, reached), highest));
  }

  /** The longest line by hose alone, through the same risers, to the cells reached. */
  private OptionalDouble byHose(int floor, List<Integer> reached) {
    return reached.stream().mapToDouble(c -> byHose(floor, assigned.get(c), c)).max();
  }

  private double byHose(int floor, Assignment a, int cell) {
    LineOption option = model.options().get(a.option());
    FloorClass on = model.floorClasses().get(a.floorClass());
    double ground =
        model.options().stream()
            .filter(o -> o.spot() == option.spot() && o.riser().equals(option.riser()))
            .filter(o -> o.ground().pipe() == 0)
            .mapToDouble(o -> o.ground().flexible())
            .min()
            .orElse(option.ground().flexible() + option.ground().pipe());
    double up = Math.abs(model.ways().rise(option, floor));
    double over = overFloor(option, on, cell);
    return ground + up + over + request.limits().whip().metres();
  }

  private double overFloor(LineOption option, FloorClass on, int cell) {
    int start =
        option.riser().isPresent()
            ? on.outlets().atRiser(option.riser().get())
            : on.outlets().atSpot(option.spot());
    int k = model.floorClasses().indexOf(on);
    int i =
        on.cells().stream()
            .filter(list -> list.contains(cell))
            .findFirst()
            .orElseThrow()
            .indexOf(cell);
    return model.problem().floors().get(k).hose()[start][i];
  }
}
