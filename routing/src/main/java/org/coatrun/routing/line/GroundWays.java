package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coatrun.routing.network.HoseDistances;
import org.coatrun.routing.network.HosePath;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.shape.Vec2;

/** The ways from one machine spot over its own floor: by hose, or by pipe with a hose tail. */
final class GroundWays {

  private final FloorSite site;
  private final MachineSpot spot;
  private final Laying laying;
  private final LineLimits limits;
  private final HoseDistances hose;
  private double[] tails = new double[0];

  GroundWays(FloorSite site, MachineSpot spot, Laying laying, LineLimits limits) {
    this.site = site;
    this.spot = spot;
    this.laying = laying;
    this.limits = limits;
    this.hose = site.hoseFrom(spot.at());
  }

  /** Hose all the way to a free point, however long. */
  Optional<GroundWay> byHose(Vec2 foot) {
    return hose.pathTo(site.target(foot))
        .map(p -> new GroundWay(List.of(laying.hose(spot.floor(), p))));
  }

  /**
   * Pipe to a free point, and hose from the machine to where the pipe begins: of the pipe nodes
   * within the tail's length the one with least pipe, or else the node with the shortest tail.
   */
  Optional<GroundWay> byPipe(Vec2 foot) {
    int best = -1;
    double bestPipe = Double.POSITIVE_INFINITY;
    double bestTail = Double.POSITIVE_INFINITY;
    double enough = limits.tail().metres();
    for (int n = 0; n < tails().length; n++) {
      OptionalDouble pipe = site.pipeFrom(foot).lengthTo(site.nodes().get(n));
      double tail = Math.max(enough, tails[n]);
      if (pipe.isPresent()
          && Double.isFinite(tail)
          && (tail < bestTail || (tail == bestTail && pipe.getAsDouble() < bestPipe))) {
        best = n;
        bestTail = tail;
        bestPipe = pipe.getAsDouble();
      }
    }
    return best < 0 ? Optional.empty() : Optional.of(pipeWay(foot, best));
  }

  /** Hose to where pipe begins nearest the machine, with that node's free point. */
  Optional<PipeStart> pipeStart() {
    int best = -1;
    for (int n = 0; n < tails().length; n++) {
      if (Double.isFinite(tails[n]) && (best < 0 || tails[n] < tails[best])) {
        best = n;
      }
    }
    if (best < 0) {
      return Optional.empty();
    }
    Vec2 at = site.nodeTargets().get(best).point();
    return byHose(at).map(way -> new PipeStart(at, way));
  }

  /** Where pipe begins and the hose to it. */
  record PipeStart(Vec2 at, GroundWay tail) {}

  private GroundWay pipeWay(Vec2 foot, int node) {
    var back =
        new ArrayList<>(site.pipeFrom(foot).runTo(site.nodes().get(node)).orElseThrow().points());
    Collections.reverse(back);
    HosePath tail = hose.pathTo(site.nodeTargets().get(node)).orElseThrow();
    return new GroundWay(
        List.of(laying.hose(spot.floor(), tail), laying.pipe(spot.floor(), new HosePath(back))));
  }

  private double[] tails() {
    if (tails.length == 0) {
      tails =
          site.nodeTargets().stream()
              .mapToDouble(t -> hose.to(t).orElse(Double.POSITIVE_INFINITY))
              .toArray();
    }
    return tails;
  }
}
