package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.coatrun.routing.network.HosePath;
import org.coatrun.routing.network.PipeTree;
import org.coatrun.routing.network.Target;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.shape.Vec2;

/**
 * The outlets that a floor may have: nodes of its pipe network, the risers that come out there, and
 * the machine spots on it, in this order.
 */
final class FloorOutlets {

  private final FloorSite site;
  private final List<Vec2> points = new ArrayList<>();
  private final List<Integer> risers = new ArrayList<>();
  private final List<Integer> spots = new ArrayList<>();

  FloorOutlets(int floor, FloorSite site, List<Riser> allRisers, List<MachineSpot> allSpots) {
    this.site = site;
    site.outlets().forEach(o -> points.add(o.point()));
    for (int r = 0; r < allRisers.size(); r++) {
      Riser riser = allRisers.get(r);
      Optional<Vec2> at = riser.joins(floor, floor) ? site.anchor(riser.at()) : Optional.empty();
      if (at.isPresent()) {
        risers.add(r);
        points.add(at.get());
      }
    }
    for (int m = 0; m < allSpots.size(); m++) {
      if (allSpots.get(m).floor() == floor) {
        spots.add(m);
        points.add(allSpots.get(m).at());
      }
    }
  }

  int size() {
    return points.size();
  }

  Vec2 point(int outlet) {
    return points.get(outlet);
  }

  /** Which risers and spots come out here: floors alike in this may share their distances. */
  List<List<Integer>> who() {
    return List.of(risers, spots);
  }

  /** The outlet at a riser itself, or −1. */
  int atRiser(int riser) {
    int k = risers.indexOf(riser);
    return k < 0 ? -1 : site.outlets().size() + k;
  }

  /** The outlet at a machine spot itself, or −1. */
  int atSpot(int spot) {
    int k = spots.indexOf(spot);
    return k < 0 ? -1 : site.outlets().size() + risers.size() + k;
  }

  /** The pipe over the floor from a free point to an outlet of the pipe network. */
  Optional<HosePath> pipe(Vec2 from, int outlet) {
    return outlet < site.outlets().size()
        ? site.pipeFrom(from).runTo(site.outlets().get(outlet).node())
        : Optional.empty();
  }

  /** The length of that pipe, or infinity. */
  double pipeLength(Vec2 from, int outlet) {
    return outlet < site.outlets().size()
        ? site.pipeFrom(from)
            .lengthTo(site.outlets().get(outlet).node())
            .orElse(Double.POSITIVE_INFINITY)
        : Double.POSITIVE_INFINITY;
  }

  /** The pipe over the floor from a free point to all outlets of the pipe network. */
  PipeTree pipeTree(Vec2 from) {
    List<Vec2> places = site.outlets().stream().map(FloorSite.Outlet::node).toList();
    PipeTree tree = site.pipeFrom(from).treeTo(places);
    int[] last = Arrays.copyOf(tree.last(), size());
    Arrays.fill(last, places.size(), size(), -1);
    return new PipeTree(tree.before(), tree.length(), last);
  }

  /** Hose as laid from an outlet to a target, or infinity. */
  double hose(int outlet, Target to, Laying laying) {
    return site.hoseFrom(points.get(outlet))
        .pathTo(to)
        .map(laying::laid)
        .orElse(Double.POSITIVE_INFINITY);
  }

  Optional<HosePath> hosePath(int outlet, Target to) {
    return site.hoseFrom(points.get(outlet)).pathTo(to);
  }
}
