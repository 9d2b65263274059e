package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.routing.floor.Contour;
import org.coatrun.routing.network.Target;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/**
 * How far hose reaches over the floors of a plan: from every outlet set up, along the shortest way,
 * until all flexible hose that is allowed is laid. The whip at its end reaches farther.
 *
 * <p>One instance serves one thread; floors that look alike share their work.
 */
public final class HoseReach {

  /** The edge is followed on a grid of about this step, in metres; coarser on large floors. */
  private static final double STEP = 1.5;

  private static final double MOST_STEPS = 60;

  /** Where corners are reached with so much to spare, no place between them is missed. */
  private static final double SPARE = 0.8;

  private static final Length HAIR = Length.ofMillimetres(1);

  private final LineRequest request;
  private final LinePlan plan;
  private final Sites sites;
  private final Laying laying;
  private final Map<Integer, Grid> grids = new HashMap<>();
  private final Map<Integer, List<Target>> corners = new HashMap<>();

  /** Free nodes of a grid, by column, then by row. */
  private record Grid(Vec2 origin, double step, List<List<Optional<Target>>> nodes) {}

  /** Looks at the plan for a request. */
  public HoseReach(LineRequest request, LinePlan plan) {
    this.request = request;
    this.plan = plan;
    this.sites = new Sites(request);
    this.laying = new Laying(request.limits());
  }

  /**
   * Where the reach ends on the free floor, as lines of points in metres; none where hose reaches
   * all of it, or no outlet is set up.
   */
  public List<List<Vec2>> edge(int floor) {
    List<SetUp> setUps = plan.floors().get(floor).setUps();
    if (setUps.isEmpty() || reachesCorners(floor, setUps)) {
      return List.of();
    }
    Grid grid = grids.computeIfAbsent(sites.look(floor), this::grid);
    double[][] beyond = new double[grid.nodes.size()][];
    for (int i = 0; i < beyond.length; i++) {
      beyond[i] =
          grid.nodes.get(i).stream()
              .mapToDouble(t -> t.map(p -> beyond(floor, setUps, p, 1)).orElse(Double.NaN))
              .toArray();
    }
    return Contour.zero(grid.origin, grid.step, beyond);
  }

  private boolean reachesCorners(int floor, List<SetUp> setUps) {
    List<Target> all =
        corners.computeIfAbsent(
            sites.look(floor), f -> outlines(f).stream().map(p -> sites.of(f).target(p)).toList());
    return all.stream().allMatch(t -> beyond(floor, setUps, t, SPARE) <= 0);
  }

  /** By how much hose to a place is over a part of what is allowed, from the nearest outlet. */
  private double beyond(int floor, List<SetUp> setUps, Target place, double part) {
    double least = Double.POSITIVE_INFINITY;
    for (SetUp s : setUps) {
      double hose =
          sites
              .of(floor)
              .hoseFrom(s.outlet())
              .pathTo(place)
              .map(laying::laid)
              .orElse(Double.POSITIVE_INFINITY);
      least = Math.min(least, hose - part * allowed(s));
    }
    return least;
  }

  /** Hose from the outlet, without the whip, that the limit leaves. */
  private double allowed(SetUp s) {
    LineLimits limits = request.limits();
    Length before = s.flexible().minus(s.hose());
    return limits.flexible().minus(limits.whip()).minus(before).metres();
  }

  private Grid grid(int floor) {
    Collection<Vec2> points = outlines(floor);
    double west = points.stream().mapToDouble(Vec2::x).min().orElse(0);
    double east = points.stream().mapToDouble(Vec2::x).max().orElse(0);
    double south = points.stream().mapToDouble(Vec2::y).min().orElse(0);
    double north = points.stream().mapToDouble(Vec2::y).max().orElse(0);
    double step = Math.max(STEP, Math.max(east - west, north - south) / MOST_STEPS);
    Vec2 origin = new Vec2(west, south);
    var nodes = new ArrayList<List<Optional<Target>>>();
    for (int i = 0; west + i * step <= east + step; i++) {
      var column = new ArrayList<Optional<Target>>();
      for (int j = 0; south + j * step <= north + step; j++) {
        Vec2 node = origin.plus(new Vec2(i * step, j * step));
        column.add(sites.of(floor).free().nearest(node, HAIR).map(sites.of(floor)::target));
      }
      nodes.add(column);
    }
    return new Grid(origin, step, nodes);
  }

  private List<Vec2> outlines(int floor) {
    return sites.of(floor).free().regions().stream()
        .map(Region::outline)
        .flatMap(List::stream)
        .toList();
  }
}
