package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.coatrun.shared.line.FloorCheck;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Move;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.RiserUse;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.RouteResult;
import org.coatrun.shared.line.SpotComparison;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.shape.Vec2;

/** One choice of the line: machines, risers, legs, places of work, checks, hardware, moves. */
final class ChoiceContent {

  private static final int MOST_MARKS = 6;

  private ChoiceContent() {}

  /** A stretch that several lines share is drawn once. */
  private record Stretch(Leg.Kind kind, int floor, int to, List<Vec2> path) {}

  static Map<String, Object> of(LineChoice choice) {
    LinePlan plan = choice.plan();
    Map<String, Object> c = new LinkedHashMap<>();
    c.put("label", choice.label());
    c.put("cost", plan.proof().cost());
    c.put("uncovered", plan.routes().stream().filter(NoRoute.class::isInstance).count());
    c.put("longest", longest(plan, true));
    c.put("pipe", longest(plan, false));
    c.put("setUps", plan.floors().stream().mapToInt(f -> f.setUps().size()).sum());
    c.put("needs", choice.compared().map(SpotComparison::needs).orElse(needs(plan)));
    c.put("breaks", choice.compared().map(SpotComparison::breaks).orElse(List.of()));
    c.put("machines", plan.machines().stream().map(ChoiceContent::machine).toList());
    c.put("risers", plan.risers().stream().map(ChoiceContent::riser).toList());
    Map<Stretch, Integer> stretches = new LinkedHashMap<>();
    c.put("cells", cells(plan, stretches));
    c.put("legs", stretches.keySet().stream().map(ChoiceContent::leg).toList());
    c.put("checks", checks(plan));
    c.put(
        "hardware",
        plan.hardware().stream()
            .map(
                h ->
                    new TreeMap<>(
                        Map.of(
                            "item",
                            h.item().words(),
                            "size",
                            h.size().metres(),
                            "count",
                            h.count())))
            .toList());
    c.put("moves", plan.moves().stream().map(Move::sentence).toList());
    c.put("proof", proof(plan));
    return c;
  }

  private static List<String> needs(LinePlan plan) {
    return plan.machines().stream().flatMap(m -> m.needs().stream()).distinct().toList();
  }

  private static double longest(LinePlan plan, boolean flexible) {
    return plan.routes().stream()
        .filter(Route.class::isInstance)
        .map(Route.class::cast)
        .mapToDouble(r -> (flexible ? r.flexible() : r.pipe()).metres())
        .max()
        .orElse(0);
  }

  private static Map<String, Object> machine(MachineSpot m) {
    return new TreeMap<>(
        Map.of("name", m.name(), "floor", m.floor(), "at", LineContent.point(m.at())));
  }

  private static Map<String, Object> riser(RiserUse r) {
    return new TreeMap<>(
        Map.of(
            "name", r.riser().name(),
            "at", LineContent.point(r.riser().at()),
            "from", r.from(),
            "to", r.to(),
            "standpipe", r.standpipe()));
  }

  /** Numbers of the stretches of a route; new ones are numbered on. The whip is no stretch. */
  private static List<Integer> numbers(Route route, Map<Stretch, Integer> stretches) {
    List<Leg> legs = route.legs();
    List<Integer> numbers = new ArrayList<>();
    for (int k = 0; k + 1 < legs.size(); k++) {
      Leg leg = legs.get(k);
      Stretch s = new Stretch(leg.kind(), leg.floor(), legs.get(k + 1).floor(), leg.path());
      stretches.putIfAbsent(s, stretches.size());
      numbers.add(stretches.get(s));
    }
    return numbers;
  }

  private static Map<String, Object> leg(Stretch s) {
    Map<String, Object> leg = new LinkedHashMap<>();
    leg.put("kind", s.kind().name());
    leg.put("floor", s.floor());
    if (s.kind().rising()) {
      leg.put("rises", true);
      leg.put("to", s.to());
    }
    leg.put("path", LineContent.points(s.path()));
    return leg;
  }

  private static List<Map<String, Object>> cells(LinePlan plan, Map<Stretch, Integer> stretches) {
    List<Map<String, Object>> cells = new ArrayList<>();
    for (int i = 0; i < plan.cells().size(); i++) {
      cells.add(cell(plan.cells().get(i), plan.routes().get(i), stretches));
    }
    return cells;
  }

  private static Map<String, Object> cell(
      WorkCell cell, RouteResult result, Map<Stretch, Integer> stretches) {
    Map<String, Object> c = new LinkedHashMap<>();
    c.put("floor", cell.floor());
    c.put("at", LineContent.point(cell.at()));
    c.put("highest", cell.highest().metres());
    c.put("access", cell.access().words());
    c.put("marks", marks(cell.marks()));
    c.put("all", cell.marks());
    if (result instanceof Route route) {
      c.put("flexible", route.flexible().metres());
      c.put("pipe", route.pipe().metres());
      c.put("bends", route.bends());
      c.put("legs", numbers(route, stretches));
    } else if (result instanceof NoRoute none) {
      c.put("no", none.sentence());
    }
    return c;
  }

  private static String marks(List<String> marks) {
    String first = String.join(", ", marks.subList(0, Math.min(MOST_MARKS, marks.size())));
    int more = marks.size() - MOST_MARKS;
    return more > 0 ? first + " and " + more + " more" : first;
  }

  private static List<Map<String, Object>> checks(LinePlan plan) {
    List<Map<String, Object>> checks = new ArrayList<>();
    for (int f = 0; f < plan.floors().size(); f++) {
      int floor = f;
      plan.floors().get(f).check().ifPresent(c -> checks.add(check(floor, c)));
    }
    return checks;
  }

  private static Map<String, Object> check(int floor, FloorCheck c) {
    Map<String, Object> check = new LinkedHashMap<>();
    check.put("floor", floor);
    check.put("rise", c.rise().metres());
    check.put("storeys", c.storeys());
    check.put("flexible", c.flexible().metres());
    check.put("pipe", c.pipe().metres());
    check.put("bends", c.bends());
    check.put("quick", c.equivalent().quick().metres());
    check.put("byBends", c.equivalent().byBends().metres());
    check.put("water", c.waterAtPump().pascals());
    check.put(
        "booster", c.booster().map(b -> b ? "needed" : "not needed").orElse("supply not known"));
    c.feederDrop().ifPresent(d -> check.put("drop", d));
    check.put("standpipe", c.standpipe());
    check.put("fans", c.fans().stream().map(ChoiceContent::fan).toList());
    check.put("notes", c.notes());
    return check;
  }

  private static String fan(FloorCheck.Fan fan) {
    return String.format(
        Locale.ROOT,
        "Air for %s: %.2f m³/s (%.0f ft³/min).",
        fan.space(),
        fan.air().cubicMetresPerSecond(),
        fan.air().cubicFeetPerMinute());
  }

  private static String proof(LinePlan plan) {
    if (plan.proof().optimal()) {
      return "Proven best among the risers, spots and outlets looked at.";
    }
    return String.format(
        Locale.ROOT,
        "Not proven best: no plan among those looked at is more than %.1f %% cheaper.",
        100 * plan.proof().gap());
  }
}
