package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** All ways for material to come up that the limits leave: spots by risers by hose or pipe. */
final class LineOptions {

  private final LineRequest request;
  private final Sites sites;
  private final List<MachineSpot> spots;
  private final List<Riser> risers;
  private final Laying laying;
  private final List<LineOption> options = new ArrayList<>();

  private LineOptions(
      LineRequest request, Sites sites, List<MachineSpot> spots, List<Riser> risers) {
    this.request = request;
    this.sites = sites;
    this.spots = spots;
    this.risers = risers;
    this.laying = new Laying(request.limits());
  }

  /** In order of spots, then of risers; work on the machine's own floor first. */
  static List<LineOption> of(
      LineRequest request, Sites sites, List<MachineSpot> spots, List<Riser> risers) {
    var all = new LineOptions(request, sites, spots, risers);
    for (int m = 0; m < spots.size(); m++) {
      all.add(m);
    }
    return all.options;
  }

  private void add(int m) {
    MachineSpot spot = spots.get(m);
    FloorSite site = sites.of(spot.floor());
    var ways = new GroundWays(site, spot, laying, request.limits());
    int f = spot.floor();
    options.add(new LineOption(m, Optional.empty(), new GroundWay(List.of()), false, f, f, f));
    ways.pipeStart()
        .ifPresent(s -> options.add(new LineOption(m, Optional.empty(), s.tail(), true, f, f, f)));
    for (int r = 0; r < risers.size(); r++) {
      Riser riser = risers.get(r);
      Optional<Vec2> foot = riser.joins(f, f) ? site.anchor(riser.at()) : Optional.empty();
      if (foot.isPresent()) {
        addRises(m, r, ways.byHose(foot.get()));
        addRises(m, r, ways.byPipe(foot.get()));
      }
    }
  }

  private void addRises(int m, int r, Optional<GroundWay> way) {
    if (way.isEmpty()) {
      return;
    }
    int f = spots.get(m).floor();
    Riser riser = risers.get(r);
    for (int top : tops(m, riser)) {
      options.add(new LineOption(m, Optional.of(r), way.get(), true, f, f + 1, top));
    }
    int low = Math.min(riser.highest(), f + request.limits().hoseStoreys());
    if (low > f) {
      options.add(new LineOption(m, Optional.of(r), way.get(), false, f, f + 1, low));
    }
    if (riser.lowest() < f && servesBelow(f)) {
      options.add(new LineOption(m, Optional.of(r), way.get(), true, f, riser.lowest(), f - 1));
    }
  }

  /** A machine looked for higher up leaves floors below to those below: material would fall. */
  private boolean servesBelow(int floor) {
    return !request.spots().isEmpty() || floor <= request.machineFloor();
  }

  /** Where a standpipe may end: as high as it goes, or below the floor of another machine. */
  private SortedSet<Integer> tops(int m, Riser riser) {
    int f = spots.get(m).floor();
    var tops = new TreeSet<Integer>();
    int highest = riser.highest();
    while (highest > f && !request.limits().machineLifts(rise(f, highest))) {
      highest--;
    }
    if (highest > f) {
      tops.add(highest);
    }
    if (request.mostMachines() > 1) {
      for (MachineSpot other : spots) {
        if (other.floor() > f + 1 && other.floor() - 1 < highest) {
          tops.add(other.floor() - 1);
        }
      }
    }
    return tops;
  }

  private Length rise(int from, int to) {
    return request.floors().get(to).elevation().minus(request.floors().get(from).elevation());
  }
}
