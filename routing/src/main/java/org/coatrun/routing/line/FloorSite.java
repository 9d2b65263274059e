package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.routing.floor.FreeArea;
import org.coatrun.routing.network.FloorNetwork;
import org.coatrun.routing.network.HoseDistances;
import org.coatrun.routing.network.PipeNetwork;
import org.coatrun.routing.network.PipeRuns;
import org.coatrun.routing.network.Target;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** Hose and pipe ways over one floor, or over all floors that look like it; remembers them. */
final class FloorSite {

  /** Outlets may lie a little closer than the spacing asks, so that none is missed. */
  private static final double CLOSER = 0.65;

  /** What one bend of pipe weighs against its length, in metres. */
  private static final double BEND = 1.5;

  private static final Length HAIR = Length.ofMetres(0.01);

  private final FreeArea free;
  private final FloorNetwork network;
  private final PipeNetwork pipes;
  private final LineLimits limits;
  private final List<Outlet> outlets = new ArrayList<>();
  private final Map<Vec2, HoseDistances> hose = new HashMap<>();
  private final Map<Vec2, PipeRuns> runs = new HashMap<>();
  private List<Target> nodeTargets = List.of();

  /** A node of the pipe network, and the free point beside it where hose begins. */
  record Outlet(Vec2 node, Vec2 point) {}

  FloorSite(FloorOutline floor, List<Region> keepOuts, LineLimits limits) {
    this.limits = limits;
    free = FreeArea.of(floor, keepOuts, limits.margin());
    network = new FloorNetwork(free.regions());
    double spacing = limits.outletSpacing().metres();
    pipes = new PipeNetwork(free.regions(), floor.columns(), limits.margin().metres(), spacing);
    for (Vec2 node : pipes.outlets(CLOSER * spacing)) {
      free.nearest(node, HAIR).ifPresent(p -> outlets.add(new Outlet(node, p)));
    }
  }

  FreeArea free() {
    return free;
  }

  List<Outlet> outlets() {
    return outlets;
  }

  /** The free point at which a riser is met on this floor. */
  Optional<Vec2> anchor(Vec2 riser) {
    return free.nearest(riser, limits.riserGap());
  }

  HoseDistances hoseFrom(Vec2 point) {
    return hose.computeIfAbsent(point, network::from);
  }

  PipeRuns pipeFrom(Vec2 point) {
    return runs.computeIfAbsent(point, p -> new PipeRuns(pipes, network, p, BEND));
  }

  Target target(Vec2 point) {
    return new Target(network, point);
  }

  /** All pipe nodes, and the targets for hose to reach them, in the same order. */
  List<Vec2> nodes() {
    return pipes.nodes();
  }

  List<Target> nodeTargets() {
    if (nodeTargets.isEmpty()) {
      nodeTargets =
          pipes.nodes().stream().map(n -> target(free.nearest(n, HAIR).orElse(n))).toList();
    }
    return nodeTargets;
  }
}
