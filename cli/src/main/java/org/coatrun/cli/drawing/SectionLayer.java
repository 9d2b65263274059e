package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Tone;
import org.coatrun.cli.drawing.paper.Typeface;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.RiserUse;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** Draws slabs, machines, risers and what leaves them, seen from the side. */
final class SectionLayer {

  private static final double DOT = 1.2;

  private final PlanCanvas to;
  private final DrawingJob job;
  private final SectionAxis axis;
  private final Measure measure;
  private final SectionPlaces places;
  private final List<List<Vec2>> pipes = new ArrayList<>();

  SectionLayer(PlanCanvas to, DrawingJob job, SectionAxis axis) {
    this.to = to;
    this.job = job;
    this.axis = axis;
    this.measure = new Measure(job.units());
    this.places = new SectionPlaces(job, axis, to.view());
  }

  void slabs() {
    for (int f = 0; f < job.request().floors().size(); f++) {
      FloorOutline floor = job.request().floors().get(f);
      double top = places.level(f);
      double thick = Math.max(0.5, to.view().size(places.thickness(f)));
      for (double[] s : axis.slabs(floor)) {
        Box box = new Box(places.across(s[0]), top, places.across(s[1]), top + thick);
        to.on().fill(List.of(box.ring()), Tone.MEDIUM);
        to.on().line(box.ring(), true, Pen.OUTLINE);
        to.labels().keepOff(box);
        to.used(LegendItem.CUT_SLAB);
      }
    }
  }

  /** Level lines of the underside above the highest floor, and of the most that hose may rise. */
  void levels(Box area) {
    List<FloorOutline> floors = job.request().floors();
    FloorOutline last = floors.get(floors.size() - 1);
    level(area, last.elevation().plus(last.height()));
    limits().forEach(limit -> level(area, limit));
  }

  /** What the level lines are, over all that lies behind the words. */
  void levelWords(Box area) {
    List<FloorOutline> floors = job.request().floors();
    FloorOutline last = floors.get(floors.size() - 1);
    words(area, last.elevation().plus(last.height()), "underside above");
    limits().forEach(limit -> words(area, limit, "standpipe above"));
  }

  /** For each machine the level above which standpipe is required, where floors lie above it. */
  private List<Length> limits() {
    List<FloorOutline> floors = job.request().floors();
    Length last = floors.get(floors.size() - 1).elevation();
    Length hose = job.request().limits().hoseRise();
    return job.plan().machines().stream()
        .map(m -> floors.get(m.floor()).elevation().plus(hose))
        .filter(limit -> limit.compareTo(last) < 0)
        .distinct()
        .toList();
  }

  void lines() {
    for (RiserUse u : job.plan().risers()) {
      double x = places.riser(u);
      List<Vec2> up = List.of(new Vec2(x, places.walk(u.from())), new Vec2(x, places.walk(u.to())));
      job.plan().machines().stream()
          .filter(m -> m.name().equals(u.machine()))
          .forEach(m -> run(m.floor(), places.across(m.at()), x, laysPipe(u.ground())));
      draw(up, u.standpipe());
    }
    setUps().forEach(s -> run(s.floor(), places.start(s), places.across(s.outlet()), byPipe(s)));
    pipes.forEach(p -> to.on().line(p, false, Pen.PIPE_CORE));
    setUps().forEach(s -> outlet(new Vec2(places.across(s.outlet()), places.walk(s.floor()))));
  }

  void machines() {
    for (MachineSpot m : job.plan().machines()) {
      Vec2 at = new Vec2(places.across(m.at()), places.level(m.floor()) - 0.7 * Symbols.MACHINE);
      to.symbols().machine(at);
      to.labels().keepOff(Box.around(at, 2 * Symbols.MACHINE, 1.4 * Symbols.MACHINE));
      to.used(LegendItem.MACHINE);
    }
  }

  void labels() {
    for (MachineSpot m : job.plan().machines()) {
      Vec2 at = new Vec2(places.across(m.at()), places.level(m.floor()) - 0.7 * Symbols.MACHINE);
      String name = Panel.cut("Machine " + m.name(), 45, 2.6);
      to.labels().near(at, Symbols.MACHINE, List.of(name), Lettering.bold(2.6));
    }
    for (RiserUse u : job.plan().risers()) {
      double x = places.riser(u);
      Vec2 foot = new Vec2(x, places.walk(u.from()));
      Vec2 head = new Vec2(x, places.walk(u.to()));
      String rise = "rise " + measure.length(u.rise());
      String name = Panel.cut(u.riser().name(), 45, 2.4);
      to.labels().near(head, DOT, List.of(name, rise), Lettering.bold(2.4));
      to.labels().keepOff(List.of(foot, head), 8);
    }
  }

  private List<SetUp> setUps() {
    return job.plan().floors().stream().flatMap(f -> f.setUps().stream()).toList();
  }

  private void run(int floor, double from, double end, boolean pipe) {
    if (Math.abs(end - from) > 0.3) {
      draw(List.of(new Vec2(from, places.walk(floor)), new Vec2(end, places.walk(floor))), pipe);
    }
  }

  private void draw(List<Vec2> line, boolean pipe) {
    to.on().line(line, false, pipe ? Pen.PIPE : Pen.HOSE);
    to.labels().keepOff(line, 8);
    to.used(pipe ? LegendItem.PIPE : LegendItem.HOSE_RUN);
    if (pipe) {
      pipes.add(line);
    }
  }

  private void outlet(Vec2 at) {
    to.symbols().outlet(at, DOT);
    to.labels().keepOff(Box.around(at, 2 * DOT, 2 * DOT));
    to.used(LegendItem.OUTLET);
  }

  private boolean byPipe(SetUp s) {
    return job.plan().routes().get(s.cells().get(0)) instanceof Route r && laysPipe(r.legs());
  }

  private static boolean laysPipe(List<Leg> legs) {
    return legs.stream().anyMatch(l -> !l.kind().flexible());
  }

  private void level(Box area, Length elevation) {
    double y = to.view().at(new Vec2(0, elevation.metres())).y();
    List<Vec2> line = List.of(new Vec2(area.left(), y), new Vec2(area.right(), y));
    to.on().line(line, false, Pen.LEVEL);
    to.labels().keepOff(line, 3);
  }

  private void words(Box area, Length elevation, String words) {
    double y = to.view().at(new Vec2(0, elevation.metres())).y();
    String text = words + ", " + measure.elevation(elevation);
    double down = places.below(y) > places.above(y) ? 2.4 : -0.8;
    Lettering lettering = Lettering.plain(2.2);
    double width = Typeface.get().width(text, lettering.size());
    double left =
        places.riserBetween(area.left(), area.left() + 1 + width)
            ? area.right() - 1 - width
            : area.left() + 1;
    Box ground = new Box(left - 0.5, y + down - 1.8, left + width + 0.5, y + down + 0.6);
    to.on().fill(List.of(ground.ring()), Tone.WHITE);
    to.on().text(new Vec2(left, y + down), text, lettering, 0);
    to.labels().keepOff(ground);
  }
}
