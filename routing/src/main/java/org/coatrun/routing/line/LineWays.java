package org.coatrun.routing.line;

import java.util.List;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.shape.Vec2;

/** The ways for material to come up, and what the limits and floors make of them. */
final class LineWays {

  private final LineRequest request;
  private final Sites sites;
  private final List<Riser> risers;
  private final List<LineOption> options;

  LineWays(LineRequest request, Sites sites, Candidates candidates) {
    this.request = request;
    this.sites = sites;
    this.risers = candidates.risers();
    options = LineOptions.of(request, sites, candidates.spots(), candidates.risers());
  }

  List<LineOption> options() {
    return options;
  }

  /** Height of a floor over the option's machine, negative below it, in metres. */
  double rise(LineOption option, int floor) {
    return request.floors().get(floor).elevation().metres()
        - request.floors().get(option.from()).elevation().metres();
  }

  /** Whether the option's riser comes out on the floor within the limits. */
  boolean serves(LineOption option, int floor, FloorOutlets outlets) {
    boolean there =
        option.riser().isEmpty()
            ? outlets.atSpot(option.spot()) >= 0
            : outlets.atRiser(option.riser().get()) >= 0
                && risers.get(option.riser().get()).joins(option.from(), floor);
    return there && option.mayServe(floor, rise(option, floor), request.limits());
  }

  /** Flexible hose from the machine up to the floor, or infinity where it is not served. */
  double before(LineOption option, int floor, FloorOutlets outlets) {
    if (!serves(option, floor, outlets)) {
      return Double.POSITIVE_INFINITY;
    }
    boolean hoseRises = option.riser().isPresent() && !option.pipeRises();
    double up = hoseRises ? Math.abs(rise(option, floor)) + beside(option, floor, outlets) : 0;
    return option.ground().flexible() + up;
  }

  /** What lies between the riser and the free floor at both its ends, in metres. */
  double beside(LineOption option, int floor, FloorOutlets outlets) {
    int r = option.riser().orElseThrow();
    double foot =
        sites
            .of(option.from())
            .anchor(risers.get(r).at())
            .orElseThrow()
            .distance(risers.get(r).at());
    return foot + outlets.point(outlets.atRiser(r)).distance(risers.get(r).at());
  }

  /** The outlet that needs no pipe on the floor, or −1 where pipe begins at once. */
  int start(LineOption option, FloorOutlets outlets) {
    if (option.riser().isPresent()) {
      return outlets.atRiser(option.riser().get());
    }
    return option.pipeRises() ? -1 : outlets.atSpot(option.spot());
  }

  /** Where pipe over the floor begins. */
  Vec2 pipeFrom(LineOption option, FloorClass c) {
    if (option.riser().isPresent()) {
      return c.outlets().point(c.outlets().atRiser(option.riser().get()));
    }
    var path = option.ground().legs().get(option.ground().legs().size() - 1).path();
    return path.get(path.size() - 1);
  }
}
