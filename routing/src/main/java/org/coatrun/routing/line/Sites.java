package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Region;

/** The floors of a request with their ways; floors that look alike share them. */
final class Sites {

  private final List<FloorSite> sites = new ArrayList<>();
  private final int[] look;

  Sites(LineRequest request) {
    List<FloorOutline> floors = request.floors();
    look = new int[floors.size()];
    for (int f = 0; f < floors.size(); f++) {
      List<Region> keepOuts = request.keepOutsOf(floors.get(f));
      look[f] = alike(request, f, keepOuts);
      sites.add(
          look[f] < f
              ? sites.get(look[f])
              : new FloorSite(floors.get(f), keepOuts, request.limits()));
    }
  }

  FloorSite of(int floor) {
    return sites.get(floor);
  }

  /** The lowest floor that looks the same. */
  int look(int floor) {
    return look[floor];
  }

  private static int alike(LineRequest request, int f, List<Region> keepOuts) {
    for (int g = 0; g < f; g++) {
      if (request.floors().get(g).sameOutline(request.floors().get(f))
          && request.keepOutsOf(request.floors().get(g)).equals(keepOuts)) {
        return g;
      }
    }
    return f;
  }
}
