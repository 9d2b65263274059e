package org.coatrun.cli.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.RiserUse;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.shape.Vec2;

/** Draws the line on a floor: pipe, hose, outlets and risers. */
final class LineLayer {

  private final PlanCanvas to;
  private final DrawingJob job;
  private final int floor;
  private final FloorPlan here;
  private final FloorLine line;

  LineLayer(PlanCanvas to, DrawingJob job, int floor) {
    this.to = to;
    this.job = job;
    this.floor = floor;
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

  /** Where the crew must find the line on the floor: machines, then risers, then outlets. */
  List<Vec2> places() {
    return Stream.of(
            job.plan().machines().stream().filter(m -> m.floor() == floor).map(MachineSpot::at),
            used().stream().map(u -> u.riser().at()),
            here.setUps().stream().map(SetUp::outlet))
        .flatMap(p -> p)
        .toList();
  }

  private List<RiserUse> used() {
    return line.risers();
  }

  private void unused(Vec2 at) {
    to.symbols().unusedRiser(at);
    to.labels().keepOff(Box.around(at, Symbols.RISER, Symbols.RISER));
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
    Stream.concat(
            line.standing().stream().flatMap(l -> Stream.of(l.path().get(0), last(l.path()))),
            here.setUps().stream()
                .filter(s -> s.riser().equals(Optional.of(use.riser().name())))
                .map(SetUp::outlet))
        .filter(p -> p.distance(riser) <= gap)
        .min((a, b) -> Double.compare(a.distance(riser), b.distance(riser)))
        .ifPresent(p -> to.on().line(to.view().at(List.of(p, riser)), false, Pen.SYMBOL));
  }

  private static Vec2 last(List<Vec2> path) {
    return path.get(path.size() - 1);
  }
}
