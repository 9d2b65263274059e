package org.coatrun.routing.line;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.coatrun.shared.line.Hardware;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SetUp;

/** Hardware of the whole job: what stands, riser by riser, and what moves from outlet to outlet. */
final class JobHardware {

  private final LineModel model;
  private final SetUps setUps;
  private final List<Assignment> assigned;
  private final List<Optional<Route>> routes;

  JobHardware(
      LineModel model, SetUps setUps, List<Assignment> assigned, List<Optional<Route>> routes) {
    this.model = model;
    this.setUps = setUps;
    this.assigned = assigned;
    this.routes = routes;
  }

  /** Of what moves, the most that any outlet asks for; sorted. */
  List<Hardware> of(List<SetUp> order) {
    List<Hardware> moving = List.of();
    var standing = new TreeMap<Integer, List<Hardware>>();
    for (SetUp s : order) {
      moving = Loading.most(moving, setUps.moving(s));
      int first = s.cells().get(0);
      int option = assigned.get(first).option();
      int passed = Math.abs(s.floor() - model.options().get(option).from());
      List<Hardware> own = setUps.standing(routes.get(first).orElseThrow(), passed);
      standing.merge(option, own, Loading::most);
    }
    List<Hardware> all = moving;
    for (List<Hardware> s : standing.values()) {
      all = Loading.sum(all, s);
    }
    return all.stream().sorted(Comparator.naturalOrder()).toList();
  }
}
