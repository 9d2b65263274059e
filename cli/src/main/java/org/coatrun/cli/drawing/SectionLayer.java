package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Tone;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.RiserUse;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** Draws slabs, machines, risers and what leaves them, seen from the side. */
final class SectionLayer {

  private static final double SLAB = 0.2;
  private static final double ABOVE = 1.3;
  private static final double APART = 6;
  private static final double DOT = 1.2;

  private final PlanCanvas to;
  private final DrawingJob job;
  private final SectionAxis axis;
  private final Measure measure;
  private final Map<String, Double> risers = new HashMap<>();
  private final List<List<Vec2>> pipes = new ArrayList<>();

  SectionLayer(PlanCanvas to, DrawingJob job, SectionAxis axis) {
    this.to = to;
    this.job = job;
    this.axis = axis;
    this.measure = new Measure(job.units());
    spread();
  }

  void slabs() {
    for (int f = 0; f < job.request().floors().size(); f++) {
      FloorOutline floor = job.request().floors().get(f);
      double top = level(f);
      double thick = Math.max(0.5, to.view().size(thickness(f)));
      for (double[] s : axis.slabs(floor)) {
        Box box = new Box(across(s[0]), top, across(s[1]), top + thick);
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
    level(area, last.elevation().plus(last.height()), "underside above");
    Length hose = job.request().limits().hoseRise();
    for (MachineSpot m : job.plan().machines()) {
      Length limit = floors.get(m.floor()).elevation().plus(hose);
      if (limit.compareTo(last.elevation()) < 0) {
        String words = "standpipe is required above this level or beyond ";
        int storeys = job.request().limits().hoseStoreys();
        level(area, limit, words + storeys + (storeys == 1 ? " storey" : " storeys"));
      }
    }
  }

  void lines() {
    for (RiserUse u : job.plan().risers()) {
      double x = risers.get(u.riser().name());
      List<Vec2> up = List.of(new Vec2(x, walk(u.from())), new Vec2(x, walk(u.to())));
      job.plan().machines().stream()
          .filter(m -> m.name().equals(u.machine()))
          .forEach(m -> run(m.floor(), across(axis.of(m.at())), x, laysPipe(u.ground())));
      draw(up, u.standpipe());
    }
    setUps().forEach(s -> run(s.floor(), start(s), across(axis.of(s.outlet())), true));
    pipes.forEach(p -> to.on().line(p, false, Pen.PIPE_CORE));
    setUps().forEach(s -> outlet(new Vec2(across(axis.of(s.outlet())), walk(s.floor()))));
  }

  void machines() {
    for (MachineSpot m : job.plan().machines()) {
      Vec2 at = new Vec2(across(axis.of(m.at())), level(m.floor()) - 0.7 * Symbols.MACHINE);
      to.symbols().machine(at);
      to.labels().keepOff(Box.around(at, 2 * Symbols.MACHINE, 1.4 * Symbols.MACHINE));
      to.used(LegendItem.MACHINE);
    }
  }

  void labels() {
    for (MachineSpot m : job.plan().machines()) {
      Vec2 at = new Vec2(across(axis.of(m.at())), level(m.floor()) - 0.7 * Symbols.MACHINE);
      String name = Panel.cut("Machine " + m.name(), 45, 2.6);
      to.labels().near(at, Symbols.MACHINE, List.of(name), Lettering.bold(2.6));
    }
    for (RiserUse u : job.plan().risers()) {
      double x = risers.get(u.riser().name());
      Vec2 foot = new Vec2(x, walk(u.from()));
      Vec2 head = new Vec2(x, walk(u.to()));
      String rise = "rise " + measure.length(u.rise());
      String name = Panel.cut(u.riser().name(), 45, 2.4);
      to.labels().near(head, DOT, List.of(name, rise), Lettering.bold(2.4));
      to.labels().keepOff(List.of(foot, head), 8);
    }
  }

  /** The top of a floor's slab on paper. */
  double level(int floor) {
    return to.view().at(new Vec2(0, job.request().floors().get(floor).elevation().metres())).y();
  }

  private double walk(int floor) {
    return level(floor) - ABOVE;
  }

  private double across(double metres) {
    return to.view().at(new Vec2(metres, 0)).x();
  }

  private List<SetUp> setUps() {
    return job.plan().floors().stream().flatMap(f -> f.setUps().stream()).toList();
  }

  private double start(SetUp s) {
    if (s.riser().isPresent() && risers.containsKey(s.riser().get())) {
      return risers.get(s.riser().get());
    }
    return job.plan().machines().stream()
        .filter(m -> m.name().equals(s.machine()))
        .mapToDouble(m -> across(axis.of(m.at())))
        .findFirst()
        .orElse(across(axis.of(s.outlet())));
  }

  private void run(int floor, double from, double end, boolean pipe) {
    if (Math.abs(end - from) > 0.3) {
      draw(List.of(new Vec2(from, walk(floor)), new Vec2(end, walk(floor))), pipe);
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

  private static boolean laysPipe(List<Leg> legs) {
    return legs.stream().anyMatch(l -> !l.kind().flexible());
  }

  private double thickness(int floor) {
    if (floor == 0) {
      return SLAB;
    }
    FloorOutline below = job.request().floors().get(floor - 1);
    double gap =
        job.request().floors().get(floor).elevation().metres()
            - below.elevation().metres()
            - below.height().metres();
    return gap > 0 ? Math.min(gap, 5 * SLAB) : SLAB;
  }

  private void level(Box area, Length elevation, String words) {
    double y = to.view().at(new Vec2(0, elevation.metres())).y();
    List<Vec2> line = List.of(new Vec2(area.left(), y), new Vec2(area.right(), y));
    to.on().line(line, false, Pen.LEVEL);
    to.labels().keepOff(line, 3);
    String text = words + ", " + measure.elevation(elevation);
    double down = roomBelow(y) > roomAbove(y) ? 2.4 : -0.8;
    to.on().text(new Vec2(area.left() + 1, y + down), text, Lettering.plain(2.2), 0);
  }

  private double roomBelow(double y) {
    return floorsOnPaper().filter(l -> l > y).map(l -> l - y).min().orElse(1e9);
  }

  private double roomAbove(double y) {
    return floorsOnPaper().filter(l -> l <= y).map(l -> y - l).min().orElse(1e9);
  }

  private DoubleStream floorsOnPaper() {
    return IntStream.range(0, job.request().floors().size()).mapToDouble(this::level);
  }

  /** Risers that lie behind each other are drawn side by side. */
  private void spread() {
    var taken = new ArrayList<Double>();
    for (RiserUse u : job.plan().risers()) {
      double x = across(axis.of(u.riser().at()));
      for (double t : taken.stream().sorted().toList()) {
        x = Math.abs(x - t) < APART ? t + APART : x;
      }
      if (risers.putIfAbsent(u.riser().name(), x) == null) {
        taken.add(x);
      }
    }
  }
}
