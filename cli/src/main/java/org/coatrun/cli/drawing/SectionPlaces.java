package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.RiserUse;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.shape.Vec2;

/** Where floors, risers and machines come to lie on a section, in millimetres of paper. */
final class SectionPlaces {

  private static final double SLAB = 0.2;
  private static final double ABOVE = 1.3;
  private static final double APART = 6;

  private final DrawingJob job;
  private final SectionAxis axis;
  private final View view;
  private final Map<String, Double> risers = new HashMap<>();

  SectionPlaces(DrawingJob job, SectionAxis axis, View view) {
    this.job = job;
    this.axis = axis;
    this.view = view;
    spread();
  }

  /** The top of a floor's slab. */
  double level(int floor) {
    return view.at(new Vec2(0, job.request().floors().get(floor).elevation().metres())).y();
  }

  /** Where lines lie on a floor: a little above its slab. */
  double walk(int floor) {
    return level(floor) - ABOVE;
  }

  double across(Vec2 p) {
    return across(axis.of(p));
  }

  double across(double metres) {
    return view.at(new Vec2(metres, 0)).x();
  }

  double riser(RiserUse use) {
    return risers.get(use.riser().name());
  }

  /** Whether some riser stands between two places, or within 2 mm of one. */
  boolean riserBetween(double left, double right) {
    return risers.values().stream().anyMatch(x -> left - 2 < x && x < right + 2);
  }

  /** Where the line of a set-up comes onto the floor: its riser, or else its machine. */
  double start(SetUp s) {
    if (s.riser().isPresent() && risers.containsKey(s.riser().get())) {
      return risers.get(s.riser().get());
    }
    return job.plan().machines().stream()
        .filter(m -> m.name().equals(s.machine()))
        .mapToDouble(m -> across(m.at()))
        .findFirst()
        .orElse(across(s.outlet()));
  }

  /** The thickness of a slab in metres, as far as the floor below tells it. */
  double thickness(int floor) {
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

  /** The room between a level and the next slab below it. */
  double below(double y) {
    return floors().filter(l -> l > y).map(l -> l - y).min().orElse(1e9);
  }

  /** The room between a level and the next slab above it. */
  double above(double y) {
    return floors().filter(l -> l <= y).map(l -> y - l).min().orElse(1e9);
  }

  private DoubleStream floors() {
    return IntStream.range(0, job.request().floors().size()).mapToDouble(this::level);
  }

  /** Risers that lie behind each other are drawn side by side. */
  private void spread() {
    var taken = new ArrayList<Double>();
    for (RiserUse u : job.plan().risers()) {
      double x = across(u.riser().at());
      for (double t : taken.stream().sorted().toList()) {
        x = Math.abs(x - t) < APART ? t + APART : x;
      }
      if (risers.putIfAbsent(u.riser().name(), x) == null) {
        taken.add(x);
      }
    }
  }
}
