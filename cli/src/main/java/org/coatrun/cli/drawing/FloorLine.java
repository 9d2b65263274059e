package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.RiserUse;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.RouteResult;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.shape.Vec2;

/**
 * The parts of all lines that lie on one floor, each once.
 *
 * @param standing pipe and hose that lead to risers and outlets
 * @param farthest for each set-up the hose to its farthest place
 * @param others hose to the other places
 * @param risers in use that pass the floor or end on it
 */
record FloorLine(
    List<Leg> standing, Map<SetUp, Leg> farthest, List<Leg> others, List<RiserUse> risers) {

  static FloorLine of(LinePlan plan, int floor) {
    FloorPlan here = plan.floors().get(floor);
    Map<SetUp, Leg> farthest = new LinkedHashMap<>();
    List<Leg> others = new ArrayList<>();
    for (SetUp s : here.setUps()) {
      farthest.put(s, tail((Route) plan.routes().get(s.cells().get(0))));
      for (int c : s.cells().subList(1, s.cells().size())) {
        others.add(tail((Route) plan.routes().get(c)));
      }
    }
    List<RiserUse> risers =
        plan.risers().stream()
            .filter(u -> Math.min(u.from(), u.to()) <= floor && floor <= Math.max(u.from(), u.to()))
            .toList();
    return new FloorLine(List.copyOf(standing(plan.routes(), floor)), farthest, others, risers);
  }

  /** All stretches of standing pipe, cut where a line ends on them, each once. */
  List<List<Vec2>> pipeStretches() {
    var ends = new ArrayList<Vec2>();
    for (Leg leg : standing) {
      ends.addAll(leg.path());
    }
    var stretches = new ArrayList<List<Vec2>>();
    Set<List<Long>> seen = new HashSet<>();
    for (Leg leg : standing) {
      if (leg.kind() == Leg.Kind.PIPE) {
        cut(leg, ends, seen, stretches);
      }
    }
    return stretches;
  }

  /** The pieces of hose to other places, each once, without those where the farthest one lies. */
  List<List<Vec2>> otherStretches() {
    Set<List<Long>> seen = new HashSet<>();
    var stretches = new ArrayList<List<Vec2>>();
    farthest.values().forEach(l -> cut(l, List.of(), seen, new ArrayList<>()));
    others.forEach(l -> cut(l, List.of(), seen, stretches));
    return stretches;
  }

  private static Collection<Leg> standing(List<RouteResult> routes, int floor) {
    var legs = new LinkedHashMap<List<Object>, Leg>();
    for (RouteResult result : routes) {
      if (result instanceof Route route) {
        for (Leg leg : route.legs().subList(0, Math.max(0, route.legs().size() - 2))) {
          if (leg.floor() == floor && !leg.kind().rising()) {
            legs.putIfAbsent(List.of(leg.kind(), leg.path()), leg);
          }
        }
      }
    }
    return legs.values();
  }

  /** The hose from the outlet: the leg before the whip. */
  private static Leg tail(Route route) {
    return route.legs().get(Math.max(0, route.legs().size() - 2));
  }

  private static void cut(
      Leg leg, List<Vec2> at, Set<List<Long>> seen, List<List<Vec2>> stretches) {
    for (int i = 1; i < leg.path().size(); i++) {
      cut(leg.path().get(i - 1), leg.path().get(i), at, seen, stretches);
    }
  }

  private static void cut(
      Vec2 a, Vec2 b, List<Vec2> at, Set<List<Long>> seen, List<List<Vec2>> stretches) {
    double length = a.distance(b);
    Vec2 way = b.minus(a).unit();
    var stops = new ArrayList<>(List.of(0.0, length));
    for (Vec2 p : at) {
      double along = p.minus(a).dot(way);
      boolean on = Math.abs(p.minus(a).cross(way)) < 0.01;
      if (on && along > 0.01 && along < length - 0.01) {
        stops.add(along);
      }
    }
    stops.sort(Double::compare);
    for (int i = 1; i < stops.size(); i++) {
      Vec2 from = a.plus(way.times(stops.get(i - 1)));
      Vec2 to = a.plus(way.times(stops.get(i)));
      if (from.distance(to) > 0.01 && seen.add(key(from, to)) && seen.add(key(to, from))) {
        stretches.add(List.of(from, to));
      }
    }
  }

  private static List<Long> key(Vec2 a, Vec2 b) {
    return List.of(grain(a.x()), grain(a.y()), grain(b.x()), grain(b.y()));
  }

  private static long grain(double metres) {
    return Math.round(metres * 100);
  }
}
