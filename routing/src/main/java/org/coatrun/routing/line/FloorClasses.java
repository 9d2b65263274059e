package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.IntStream;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.WorkCell;

/** Finds the floors that are one to the choice of outlets. */
final class FloorClasses {

  private final LineRequest request;
  private final Sites sites;
  private final Candidates candidates;
  private final List<WorkCell> cells;
  private final LineWays ways;

  FloorClasses(
      LineRequest request,
      Sites sites,
      Candidates candidates,
      List<WorkCell> cells,
      LineWays ways) {
    this.request = request;
    this.sites = sites;
    this.candidates = candidates;
    this.cells = cells;
    this.ways = ways;
  }

  /** Every floor with work in one class, in the order of their lowest floors. */
  List<FloorClass> all() {
    var byKey = new LinkedHashMap<Object, FloorClass>();
    for (int f = 0; f < request.floors().size(); f++) {
      List<Integer> here = cellsOn(f);
      if (!here.isEmpty()) {
        var outlets = new FloorOutlets(f, sites.of(f), candidates.risers(), candidates.spots());
        Object key = List.of(sites.look(f), work(here), outlets.who(), befores(f, outlets));
        FloorClass known = byKey.get(key);
        byKey.put(key, known == null ? alone(f, outlets, here) : with(known, f, here));
      }
    }
    return List.copyOf(byKey.values());
  }

  private static FloorClass alone(int f, FloorOutlets outlets, List<Integer> here) {
    return new FloorClass(List.of(f), outlets, List.of(here));
  }

  private static FloorClass with(FloorClass known, int f, List<Integer> here) {
    var floors = new ArrayList<>(known.floors());
    var all = new ArrayList<>(known.cells());
    floors.add(f);
    all.add(here);
    return new FloorClass(floors, known.outlets(), all);
  }

  private List<Integer> cellsOn(int f) {
    return IntStream.range(0, cells.size()).filter(c -> cells.get(c).floor() == f).boxed().toList();
  }

  private List<List<Long>> work(List<Integer> here) {
    return here.stream()
        .map(cells::get)
        .map(
            c ->
                List.of(
                    Math.round(c.at().x() * 1e3),
                    Math.round(c.at().y() * 1e3),
                    Math.round(c.coating().cubicMetres() * 1e6)))
        .toList();
  }

  private List<Long> befores(int f, FloorOutlets outlets) {
    return ways.options().stream().map(o -> Math.round(ways.before(o, f, outlets) * 1e6)).toList();
  }
}
