package org.coatrun.cli.drawing;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Typeface;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.RiserUse;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** Draws the line on a floor: pipe, hose, outlets and risers, and how long they are. */
final class LineLayer {

  private static final Lettering DIMENSION = Lettering.plain(2.2);

  private final PlanCanvas to;
  private final DrawingJob job;
  private final Measure measure;
  private final int floor;
  private final FloorPlan here;
  private final FloorLine line;

  LineLayer(PlanCanvas to, DrawingJob job, int floor) {
    this.to = to;
    this.job = job;
    this.floor = floor;
    measure = new Measure(job.units());
    here = job.plan().floors().get(floor);
    line = FloorLine.of(job.plan(), floor);
  }

  /** Where hose can reach no farther. */
  void reach(List<List<Vec2>> edge) {
    edge.forEach(e -> draw(e, Pen.REACH, 2, LegendItem.REACH));
  }

  /** All that lies on the floor. */
  void lines() {
    line.otherStretches().forEach(s -> draw(s, Pen.HOSE_OTHER, 0.8, LegendItem.HOSE_OTHER));
    line.farthest().values().forEach(l -> draw(l.path(), Pen.HOSE, 4, LegendItem.HOSE));
    for (Leg leg : line.standing()) {
      if (leg.kind() == Leg.Kind.PIPE) {
        draw(leg.path(), Pen.PIPE, 6, LegendItem.PIPE);
      } else {
        draw(leg.path(), Pen.HOSE, 4, LegendItem.HOSE);
      }
    }
    used().forEach(this::beside);
    line.standing().stream()
        .filter(l -> l.kind() == Leg.Kind.PIPE)
        .forEach(l -> to.on().line(to.view().at(l.path()), false, Pen.PIPE_CORE));
  }

  /** Risers and outlets. */
  void marks() {
    job.plan().candidates().stream()
        .filter(r -> r.joins(floor, floor))
        .filter(r -> used().stream().noneMatch(u -> u.riser().equals(r)))
        .forEach(r -> unused(to.view().at(r.at())));
    for (RiserUse u : used()) {
      Vec2 at = to.view().at(u.riser().at());
      to.symbols().riser(at, u.standpipe());
      to.labels().keepOff(Box.around(at, 2 * Symbols.RISER, 2 * Symbols.RISER));
      to.used(u.standpipe() ? LegendItem.PIPE_RISER : LegendItem.HOSE_RISER);
    }
    for (SetUp s : here.setUps()) {
      Vec2 at = to.view().at(s.outlet());
      to.symbols().outlet(at);
      to.labels().keepOff(Box.around(at, 2 * Symbols.OUTLET, 2 * Symbols.OUTLET));
      to.used(LegendItem.OUTLET);
    }
  }

  /** Numbers of set-ups, names of risers, lengths along the line. */
  void labels() {
    Map<String, List<SetUp>> byPlace =
        here.setUps().stream()
            .collect(
                Collectors.groupingBy(
                    s -> s.outlet().toString(), TreeMap::new, Collectors.toList()));
    for (List<SetUp> group : byPlace.values()) {
      Vec2 at = to.view().at(group.get(0).outlet());
      to.labels().near(at, Symbols.OUTLET, List.of(setUps(group)), Lettering.bold(2.8));
    }
    for (RiserUse u : used()) {
      to.labels()
          .near(to.view().at(u.riser().at()), Symbols.RISER, riserWords(u), Lettering.bold(2.4));
    }
    line.pipeStretches().forEach(s -> dimension(s.get(0), s.get(1)));
    line.farthest().values().forEach(l -> hoseLength(l));
    line.standing().stream().filter(l -> l.kind() == Leg.Kind.HOSE).forEach(l -> hoseLength(l));
  }

  private static String setUps(List<SetUp> group) {
    String numbers =
        group.stream().map(s -> String.valueOf(s.number())).collect(Collectors.joining(", "));
    return (group.size() == 1 ? "Set-up " : "Set-ups ") + numbers;
  }

  private List<String> riserWords(RiserUse u) {
    String way = u.standpipe() ? "standpipe" : "hose";
    String other =
        floor == u.from()
            ? (u.to() > u.from() ? " up to " : " down to ") + storey(u.to())
            : " from " + storey(u.from());
    return List.of(Panel.cut(u.riser().name(), 40, 2.4), Panel.cut(way + other, 45, 2.4));
  }

  private String storey(int index) {
    return job.request().floors().get(index).storey();
  }

  private List<RiserUse> used() {
    return job.plan().risers().stream()
        .filter(u -> Math.min(u.from(), u.to()) <= floor && floor <= Math.max(u.from(), u.to()))
        .toList();
  }

  private void unused(Vec2 at) {
    to.symbols().unusedRiser(at);
    to.used(LegendItem.UNUSED_RISER);
  }

  private void draw(List<Vec2> points, Pen pen, double weight, LegendItem item) {
    List<Vec2> path = to.view().at(points);
    to.on().line(path, false, pen);
    to.labels().keepOff(path, weight);
    to.used(item);
  }

  /** The way between a riser and the free floor beside it, where the line goes that way. */
  private void beside(RiserUse use) {
    Vec2 riser = use.riser().at();
    double gap = job.request().limits().riserGap().metres() + 0.01;
    line.standing().stream()
        .flatMap(l -> List.of(l.path().get(0), l.path().get(l.path().size() - 1)).stream())
        .filter(p -> p.distance(riser) <= gap)
        .min((a, b) -> Double.compare(a.distance(riser), b.distance(riser)))
        .ifPresent(p -> to.on().line(to.view().at(List.of(p, riser)), false, Pen.SYMBOL));
  }

  private void dimension(Vec2 a, Vec2 b) {
    along(a, b, measure.length(Length.ofMetres(a.distance(b))));
  }

  /** Too short a stretch gets no length of its own. */
  private void along(Vec2 a, Vec2 b, String text) {
    double room = to.view().size(a.distance(b));
    if (room >= Typeface.get().width(text, DIMENSION.size()) + 1) {
      to.labels().along(to.view().at(a), to.view().at(b), text, DIMENSION);
    }
  }

  /** The length as laid, on the longest stretch. */
  private void hoseLength(Leg leg) {
    Vec2 a = leg.path().get(0);
    Vec2 b = leg.path().get(1);
    for (int i = 2; i < leg.path().size(); i++) {
      if (leg.path().get(i - 1).distance(leg.path().get(i)) > a.distance(b)) {
        a = leg.path().get(i - 1);
        b = leg.path().get(i);
      }
    }
    along(a, b, "hose " + measure.length(leg.laid()));
  }
}
