package org.coatrun.cli.drawing;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.shared.line.Access;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** Draws the work of a floor: the steel overhead, and the places it is sprayed from. */
final class WorkLayer {

  /** Shorter than this on paper, steel is upright or too small to see, in millimetres. */
  private static final double LEAST = 0.5;

  private final PlanCanvas to;
  private final DrawingJob job;

  WorkLayer(PlanCanvas to, DrawingJob job) {
    this.to = to;
    this.job = job;
  }

  /** The pieces that some place on the floor sprays, wholly or in part. */
  void steel(int floor) {
    for (WorkPiece piece : job.request().work()) {
      if (sprayedFrom(floor, piece)) {
        Vec2 a = to.view().at(flat(piece.from()));
        Vec2 b = to.view().at(flat(piece.to()));
        if (a.distance(b) >= LEAST) {
          to.on().line(List.of(a, b), false, Pen.STEEL);
          to.labels().keepOff(List.of(a, b), 0.6);
          to.used(LegendItem.STEEL);
        }
      }
    }
  }

  /** The places of work; each keeps labels off. */
  void cells(FloorPlan floor) {
    Map<Integer, Integer> setUp = new HashMap<>();
    for (SetUp s : floor.setUps()) {
      s.cells().forEach(c -> setUp.put(c, s.number()));
    }
    for (int c : floor.cells()) {
      WorkCell cell = job.plan().cells().get(c);
      Vec2 at = besideMachines(cell);
      if (job.plan().routes().get(c) instanceof Route) {
        to.symbols().cell(at, cell.access(), String.valueOf(setUp.getOrDefault(c, 0)));
        to.used(item(cell.access()));
      } else {
        to.symbols().unreached(at);
        to.used(LegendItem.UNREACHED);
      }
      to.labels().keepOff(Box.around(at, 2.4 * Symbols.CELL, 2.4 * Symbols.CELL));
    }
  }

  /** Where a place is marked: beside the symbol of a machine rather than under it. */
  private Vec2 besideMachines(WorkCell cell) {
    Vec2 at = to.view().at(cell.at());
    for (MachineSpot m : job.plan().machines()) {
      Vec2 away = at.minus(to.view().at(m.at()));
      double x = Symbols.MACHINE + 1.4 * Symbols.CELL - Math.abs(away.x());
      double y = 0.7 * Symbols.MACHINE + 1.4 * Symbols.CELL - Math.abs(away.y());
      if (m.floor() == cell.floor() && x > 0 && y > 0) {
        Vec2 push = x < y ? new Vec2(away.x() < 0 ? -x : x, 0) : new Vec2(0, away.y() < 0 ? -y : y);
        at = at.plus(push);
      }
    }
    return at;
  }

  private static LegendItem item(Access access) {
    return LegendItem.of(access);
  }

  /**
   * Whether a place on the floor names the piece and no higher floor under the piece does. Marks
   * need not be unique; where they repeat, the elevation tells the pieces apart.
   */
  private boolean sprayedFrom(int floor, WorkPiece piece) {
    String name = piece.mark().isEmpty() ? piece.guid() : piece.mark();
    double top = Math.max(piece.from().z(), piece.to().z());
    double underside = Math.min(piece.from().z(), piece.to().z()) - piece.depth().metres() / 2;
    if (!marks(floor).contains(name) || elevation(floor) > top) {
      return false;
    }
    for (int above = floor + 1; above < job.request().floors().size(); above++) {
      if (elevation(above) <= underside && marks(above).contains(name)) {
        return false;
      }
    }
    return true;
  }

  private final Map<Integer, Set<String>> marks = new HashMap<>();

  private Set<String> marks(int floor) {
    return marks.computeIfAbsent(
        floor,
        f -> {
          Set<String> names = new HashSet<>();
          for (int c : job.plan().floors().get(f).cells()) {
            names.addAll(job.plan().cells().get(c).marks());
          }
          return names;
        });
  }

  private double elevation(int floor) {
    return job.request().floors().get(floor).elevation().metres();
  }

  private static Vec2 flat(Vec3 p) {
    return new Vec2(p.x(), p.y());
  }
}
