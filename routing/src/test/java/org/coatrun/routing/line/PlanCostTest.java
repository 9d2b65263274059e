package org.coatrun.routing.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.LineCosts;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.shape.Vec2;
import org.junit.jupiter.api.Test;

/** The cost that a plan prints, counted again from the lines that it draws. */
class PlanCostTest {

  private static final LineCosts COSTS = LineCosts.estimates();

  /** A plate of 100 m: hose alone does not reach its far side. */
  @Test
  void pipeThatOutletsShareIsPaidForOnce() {
    Towers hall = Towers.of(1, 6, 100, 10);
    var spot = new MachineSpot("dock", 0, new Vec2(4, 50), 0, List.of());
    LineRequest request = LineRequest.of(hall.floors(), hall.work()).withSpots(List.of(spot), 1);
    LinePlan plan = LinePlanner.plan(request);
    assertThat(plan.routes()).allMatch(r -> r instanceof Route);
    List<Route> routes = plan.routes().stream().map(Route.class::cast).toList();
    List<Leg> pipes = pipes(routes);
    double laid = together(pipes);
    double apart = pipes.stream().mapToDouble(p -> p.laid().metres()).sum();
    assertThat(laid).isPositive().isLessThan(apart - 20);

    double sum = COSTS.machine() + COSTS.pipePerMetre() * laid;
    sum += COSTS.outlet() * plan.floors().get(0).setUps().size();
    sum += COSTS.hosePerMetre() * tails(routes);
    for (int c = 0; c < routes.size(); c++) {
      double hose = routes.get(c).flexible().metres() - request.limits().whip().metres();
      sum += COSTS.breakdown() * plan.cells().get(c).coating().cubicMetres() * hose;
    }
    assertThat(plan.proof().cost()).isCloseTo(sum, within(1e-3));
    assertThat(plan.proof().bound()).isLessThanOrEqualTo(plan.proof().cost() + 1e-6);
  }

  /** Each pipe once, however many lines go through it. */
  private static List<Leg> pipes(List<Route> routes) {
    return routes.stream()
        .flatMap(r -> r.legs().stream())
        .filter(l -> l.kind() == Leg.Kind.PIPE)
        .distinct()
        .toList();
  }

  /** Hose between machine and pipe, once. */
  private static double tails(List<Route> routes) {
    var tails = new HashSet<Leg>();
    for (Route r : routes) {
      boolean piped = r.legs().stream().anyMatch(l -> l.kind() == Leg.Kind.PIPE);
      if (piped && r.legs().get(0).kind() == Leg.Kind.HOSE) {
        tails.add(r.legs().get(0));
      }
    }
    return tails.stream().mapToDouble(l -> l.laid().metres()).sum();
  }

  /** The length of all pipes laid over each other. */
  private static double together(List<Leg> pipes) {
    Map<List<Long>, List<double[]>> lines = new HashMap<>();
    for (Leg pipe : pipes) {
      for (int i = 1; i < pipe.path().size(); i++) {
        add(pipe.path().get(i - 1), pipe.path().get(i), lines);
      }
    }
    return lines.values().stream().mapToDouble(PlanCostTest::covered).sum();
  }

  private static void add(Vec2 a, Vec2 b, Map<List<Long>, List<double[]>> lines) {
    Vec2 along = b.minus(a).unit();
    boolean back = along.x() < -1e-9 || (Math.abs(along.x()) <= 1e-9 && along.y() < 0);
    Vec2 way = back ? along.times(-1) : along;
    List<Long> line =
        List.of(
            Math.round(way.x() * 1e4), Math.round(way.y() * 1e4), Math.round(way.cross(a) * 1e2));
    double from = Math.min(way.dot(a), way.dot(b));
    double to = Math.max(way.dot(a), way.dot(b));
    lines.computeIfAbsent(line, k -> new ArrayList<>()).add(new double[] {from, to});
  }

  private static double covered(List<double[]> pieces) {
    pieces.sort(Comparator.comparingDouble(p -> p[0]));
    double sum = 0;
    double end = Double.NEGATIVE_INFINITY;
    for (double[] p : pieces) {
      sum += Math.max(0, p[1] - Math.max(end, p[0]));
      end = Math.max(end, p[1]);
    }
    return sum;
  }
}
