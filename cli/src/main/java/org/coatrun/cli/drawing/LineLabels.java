package org.coatrun.cli.drawing;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Typeface;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.RiserUse;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** Writes numbers of set-ups, names of risers and lengths along the line of a floor. */
final class LineLabels {

  private static final Lettering DIMENSION = Lettering.plain(2.2);

  private final PlanCanvas to;
  private final DrawingJob job;
  private final int floor;
  private final FloorLine line;
  private final Measure measure;

  LineLabels(PlanCanvas to, DrawingJob job, int floor) {
    this.to = to;
    this.job = job;
    this.floor = floor;
    line = FloorLine.of(job.plan(), floor);
    measure = new Measure(job.units());
  }

  /** Numbers first, then names, then lengths. */
  void write() {
    Map<String, List<SetUp>> byPlace =
        job.plan().floors().get(floor).setUps().stream()
            .collect(
                Collectors.groupingBy(
                    s -> s.outlet().toString(), TreeMap::new, Collectors.toList()));
    for (List<SetUp> group : byPlace.values()) {
      Vec2 outlet = group.get(0).outlet();
      double radius = atMachine(outlet) ? 1.2 * Symbols.MACHINE : Symbols.OUTLET;
      to.labels().near(to.view().at(outlet), radius, List.of(setUps(group)), Lettering.bold(2.8));
    }
    for (RiserUse u : line.risers()) {
      to.labels()
          .near(to.view().at(u.riser().at()), Symbols.RISER, riserWords(u), Lettering.bold(2.4));
    }
    line.pipeStretches().forEach(s -> dimension(s.get(0), s.get(1)));
    line.farthest().values().forEach(this::hoseLength);
    line.standing().stream().filter(l -> l.kind() == Leg.Kind.HOSE).forEach(this::hoseLength);
  }

  /** Whether the machine's symbol lies over the outlet. */
  private boolean atMachine(Vec2 outlet) {
    return job.plan().machines().stream()
        .anyMatch(m -> m.floor() == floor && m.at().distance(outlet) < 0.01);
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
