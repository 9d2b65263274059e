package org.coatrun.routing.line;

import java.util.List;
import org.coatrun.routing.network.Target;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.line.Wording;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.units.Length;

/** Says of a place that no line reaches which limit broke at the nearest miss, and by how much. */
final class Misses {

  private final LineRequest request;
  private final Sites sites;
  private final LineModel model;
  private final List<MachineSpot> spots;
  private final List<Riser> risers;
  private final Laying laying;

  Misses(
      LineRequest request,
      Sites sites,
      LineModel model,
      List<MachineSpot> spots,
      List<Riser> risers) {
    this.request = request;
    this.sites = sites;
    this.model = model;
    this.spots = spots;
    this.risers = risers;
    this.laying = new Laying(request.limits());
  }

  /**
   * @param used the machine spots of the plan, or all where it uses none
   */
  NoRoute of(WorkCell cell, FloorClass c, List<Integer> used) {
    Target target = sites.of(cell.floor()).target(cell.at());
    double best = Double.POSITIVE_INFINITY;
    String by = "";
    boolean served = false;
    for (LineOption option : model.options()) {
      double before = model.ways().before(option, cell.floor(), c.outlets());
      if (used.contains(option.spot()) && Double.isFinite(before)) {
        served = true;
        double flexible = before + nearest(option, c, target);
        if (flexible < best) {
          best = flexible;
          by = name(option);
        }
      }
    }
    if (Double.isFinite(best)) {
      return tooLong(best + request.limits().whip().metres(), by);
    }
    return served ? closed() : unserved(cell, used);
  }

  private double nearest(LineOption option, FloorClass c, Target target) {
    double best = Double.POSITIVE_INFINITY;
    int own = model.ways().start(option, c.outlets());
    boolean pipes = option.riser().isPresent() || option.pipeRises();
    for (int o = 0; o < c.outlets().size(); o++) {
      boolean there =
          o == own
              || (pipes
                  && Double.isFinite(c.outlets().pipeLength(model.ways().pipeFrom(option, c), o)));
      if (there) {
        best = Math.min(best, c.outlets().hose(o, target, laying));
      }
    }
    return best;
  }

  private String name(LineOption option) {
    String spot = spots.get(option.spot()).name();
    return option.riser().map(r -> spot + " and " + risers.get(r).name()).orElse(spot);
  }

  private NoRoute tooLong(double metres, String by) {
    Length over = Length.ofMetres(metres).minus(request.limits().flexible());
    return new NoRoute(
        NoRoute.Limit.FLEXIBLE_HOSE,
        over,
        "the nearest line, by "
            + by
            + ", takes "
            + words().about(Length.ofMetres(metres))
            + " of flexible hose, "
            + words().length(over)
            + " over "
            + words().about(request.limits().flexible()));
  }

  private Wording words() {
    return request.wording();
  }

  private static NoRoute closed() {
    return new NoRoute(
        NoRoute.Limit.NO_WAY,
        Length.ZERO,
        "walls, edges or keep-outs close every way over its floor");
  }

  private NoRoute unserved(WorkCell cell, List<Integer> used) {
    for (int m : used) {
      int from = spots.get(m).floor();
      Length rise =
          request
              .floors()
              .get(cell.floor())
              .elevation()
              .minus(request.floors().get(from).elevation());
      boolean joined = risers.stream().anyMatch(r -> r.joins(from, cell.floor()));
      if (joined && !request.limits().machineLifts(rise)) {
        Length rated = request.limits().machineLift().orElseThrow();
        return new NoRoute(
            NoRoute.Limit.MACHINE_LIFT,
            rise.minus(rated),
            "the rise of "
                + words().about(rise)
                + " is "
                + words().length(rise.minus(rated))
                + " over what the machine is rated for");
      }
    }
    return new NoRoute(
        NoRoute.Limit.NO_RISER,
        Length.ZERO,
        "no riser joins its floor with that of a machine in use");
  }
}
