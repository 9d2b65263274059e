package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.coatrun.shared.line.Access;
import org.coatrun.shared.line.Hardware;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/** Gathers cells by the outlet they are sprayed from, in the order of work. */
final class SetUps {

  private final LineRequest request;
  private final LineModel model;
  private final Candidates candidates;
  private final List<WorkCell> cells;
  private final List<Optional<Route>> routes;
  private final Loading loading;

  SetUps(
      LineRequest request,
      LineModel model,
      Candidates candidates,
      List<WorkCell> cells,
      List<Optional<Route>> routes) {
    this.request = request;
    this.model = model;
    this.candidates = candidates;
    this.cells = cells;
    this.routes = routes;
    this.loading = new Loading(request.stock());
  }

  /**
   * Machine by machine and riser by riser, from the lowest floor up, on a floor the outlet with the
   * longest line first, and of an outlet the farthest cell first.
   */
  List<SetUp> inOrder(List<Assignment> assignments) {
    var groups = new TreeMap<Place, List<Integer>>();
    for (int c = 0; c < assignments.size(); c++) {
      Assignment a = assignments.get(c);
      if (a.reached()) {
        var place =
            new Place(
                model.options().get(a.option()).spot(),
                a.option(),
                cells.get(c).floor(),
                a.floorClass(),
                a.outlet());
        groups.computeIfAbsent(place, k -> new ArrayList<>()).add(c);
      }
    }
    groups.values().forEach(g -> g.sort(Comparator.comparingDouble(c -> -hose(c))));
    List<Place> order =
        groups.keySet().stream()
            .sorted(
                Comparator.comparingInt(Place::spot)
                    .thenComparingInt(Place::option)
                    .thenComparingInt(Place::floor)
                    .thenComparingDouble(p -> -length(groups.get(p).get(0)))
                    .thenComparingInt(Place::outlet))
            .toList();
    var setUps = new ArrayList<SetUp>();
    for (Place p : order) {
      setUps.add(setUp(setUps.size() + 1, p, groups.get(p)));
    }
    return setUps;
  }

  /** Hardware of the parts that stay while a riser is in use. */
  List<Hardware> standing(Route route, int floorsPassed) {
    return loading.of(route.legs().subList(0, standingLegs(route)), floorsPassed);
  }

  /** Hardware of the parts that change with the outlet. */
  List<Hardware> moving(SetUp s) {
    Route route = route(s.cells().get(0));
    List<Hardware> line =
        loading.of(route.legs().subList(standingLegs(route), route.legs().size()), 0);
    return Loading.sum(line, loading.poleGun(poleGun(s.cells())));
  }

  private SetUp setUp(int number, Place p, List<Integer> group) {
    Route longest = route(group.get(0));
    LineOption option = model.options().get(p.option);
    int passed = Math.abs(p.floor - option.from());
    List<Hardware> hardware =
        Loading.sum(loading.of(longest.legs(), passed), loading.poleGun(poleGun(group)));
    double coating = group.stream().mapToDouble(c -> cells.get(c).coating().cubicMetres()).sum();
    Length flexible =
        group.stream().map(c -> route(c).flexible()).max(Comparator.naturalOrder()).orElseThrow();
    return new SetUp(
        number,
        p.floor,
        candidates.spots().get(p.spot).name(),
        option.riser().map(r -> candidates.risers().get(r).name()),
        model.floorClasses().get(p.floorClass).outlets().point(p.outlet),
        group,
        Volume.ofCubicMetres(coating),
        Length.ofMetres(hose(group.get(0))).plus(request.limits().whip()),
        flexible,
        hardware);
  }

  /** The longest pole gun that the cells ask for. */
  private Length poleGun(List<Integer> group) {
    return group.stream()
        .map(cells::get)
        .filter(c -> c.access() == Access.POLE_GUN)
        .map(c -> request.reach().poleGunFor(c.highest()))
        .max(Comparator.naturalOrder())
        .orElse(Length.ZERO);
  }

  private int standingLegs(Route route) {
    int n = route.legs().size();
    for (int i = 0; i < n; i++) {
      if (route.legs().get(i).kind().rising()) {
        return i + 1;
      }
    }
    return 0;
  }

  /** The hose from the outlet as laid, without the whip. */
  private double hose(int cell) {
    List<Leg> legs = route(cell).legs();
    return legs.get(legs.size() - 2).laid().metres();
  }

  private double length(int cell) {
    return route(cell).length().metres();
  }

  private Route route(int cell) {
    return routes.get(cell).orElseThrow();
  }

  /** An outlet on one floor, in use by one option. */
  private record Place(int spot, int option, int floor, int floorClass, int outlet)
      implements Comparable<Place> {
    @Override
    public int compareTo(Place o) {
      return Comparator.comparingInt(Place::option)
          .thenComparingInt(Place::floor)
          .thenComparingInt(Place::outlet)
          .compare(this, o);
    }
  }
}
