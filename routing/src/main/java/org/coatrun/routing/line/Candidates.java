package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.coatrun.routing.floor.RiserFinder;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.shape.Vec2;

/**
 * Machine spots and risers that a plan may use: those that the job file names and can be used, and
 * those found.
 */
record Candidates(List<MachineSpot> spots, List<Riser> risers) {

  private static final double EDGE_RISERS = 15;

  /** Names that cannot be used are left out with a finding. */
  static Candidates of(LineRequest request, Sites sites, List<Finding> findings) {
    return new Candidates(spots(request, sites, findings), risers(request, sites, findings));
  }

  private static List<MachineSpot> spots(LineRequest request, Sites sites, List<Finding> findings) {
    if (request.floors().isEmpty()) {
      return List.of();
    }
    if (request.spots().isEmpty()) {
      return new SpotFinder(request).find();
    }
    var free = new ArrayList<MachineSpot>();
    for (MachineSpot s : request.spots()) {
      Optional<Vec2> at = sites.of(s.floor()).anchor(s.at());
      if (at.isPresent()) {
        double cost = s.extraCost() + new SpotFinder(request).service(s.floor(), s.at());
        free.add(new MachineSpot(s.name(), s.floor(), at.get(), cost, needs(request, s)));
      } else {
        findings.add(leftOut("Machine spot " + s.name() + " was left out."));
      }
    }
    return List.copyOf(free);
  }

  /** What it is said to need, what a spot that is found needs, and a place for the bags. */
  private static List<String> needs(LineRequest request, MachineSpot spot) {
    var needs = new ArrayList<>(spot.needs());
    needs.addAll(new SpotFinder(request).needs(spot.floor(), spot.at()));
    if (!new MachineRoom(request, spot.floor()).beside(spot.at())) {
      needs.add(
          "no clear floor of "
              + request.wording().sides(request.site().roomLength(), request.site().roomWidth())
              + " beside it: a dry place for the bags within reach");
    }
    return needs;
  }

  private static List<Riser> risers(LineRequest request, Sites sites, List<Finding> findings) {
    var risers = new ArrayList<Riser>();
    for (Riser r : request.risers()) {
      if (joinsFloors(r, sites)) {
        risers.add(r);
      } else {
        String gap = request.wording().about(request.limits().riserGap());
        findings.add(
            leftOut(
                "Riser "
                    + r.name()
                    + " was left out: fewer than two storeys have free floor within "
                    + gap
                    + " of it."));
      }
    }
    if (request.findRisers()) {
      List<Riser> found = RiserFinder.throughOpenings(request.floors());
      risers.addAll(found);
      risers.addAll(
          RiserFinder.alongEdges(
              request.floors(), request.site().truckAccess(), EDGE_RISERS, found.size() + 1));
    }
    return List.copyOf(risers);
  }

  /** Risers of the job file that the limits and floors leave no way through, one finding each. */
  List<Finding> withoutWay(LineRequest request, LineModel model) {
    Set<Integer> ways =
        model.options().stream()
            .flatMap(o -> o.riser().stream())
            .collect(Collectors.toUnmodifiableSet());
    return IntStream.range(0, risers.size())
        .filter(r -> !ways.contains(r) && request.risers().contains(risers.get(r)))
        .mapToObj(r -> leftOut(withoutWay(risers.get(r))))
        .toList();
  }

  private static String withoutWay(Riser riser) {
    return "Riser "
        + riser.name()
        + " was left out: from no machine spot does a way lead to it on the spot's own storey.";
  }

  private static boolean joinsFloors(Riser riser, Sites sites) {
    return IntStream.rangeClosed(riser.lowest(), riser.highest())
            .filter(f -> sites.of(f).anchor(riser.at()).isPresent())
            .limit(2)
            .count()
        == 2;
  }

  private static Finding leftOut(String sentence) {
    return Finding.of(LineFinding.SPOT_NOT_FREE, sentence);
  }
}
