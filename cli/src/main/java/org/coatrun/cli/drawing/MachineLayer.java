package org.coatrun.cli.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.SiteFacts;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** Draws the machine with its bags, and where power, water and trucks come in. */
final class MachineLayer {

  private final PlanCanvas to;
  private final DrawingJob job;
  private final int floor;
  private final Measure measure;

  MachineLayer(PlanCanvas to, DrawingJob job, int floor) {
    this.to = to;
    this.job = job;
    this.floor = floor;
    this.measure = new Measure(job.units());
  }

  /** The room that each machine of the floor needs. */
  void rooms() {
    double side = to.view().size(job.request().site().roomWidth().metres());
    double along = to.view().size(job.request().site().roomLength().metres());
    for (MachineSpot m : machines()) {
      Box room = Box.around(to.view().at(m.at()), along, side);
      if (side > 0 && to.area().contains(room)) {
        to.on().line(room.ring(), true, Pen.ROOM);
        to.labels().keepOffRing(room.ring(), 2);
        to.used(LegendItem.ROOM);
      }
      bags(m, side);
    }
  }

  void marks() {
    for (MachineSpot m : machines()) {
      Vec2 at = to.view().at(m.at());
      to.symbols().machine(at);
      to.labels().keepOff(Box.around(at, 2 * Symbols.MACHINE, 1.4 * Symbols.MACHINE));
      to.used(LegendItem.MACHINE);
    }
    if (!machines().isEmpty() && onGround()) {
      SiteFacts site = job.request().site();
      site.power().ifPresent(p -> supply(p, "P", LegendItem.POWER, true));
      site.water().ifPresent(p -> supply(p, "W", LegendItem.WATER, true));
      double nearest = site.truckAccess().stream().mapToDouble(this::away).min().orElse(0);
      site.truckAccess().forEach(t -> supply(t, "T", LegendItem.TRUCKS, away(t) <= nearest));
    }
  }

  void labels() {
    for (MachineSpot m : machines()) {
      String name = Panel.cut("Machine " + m.name(), 45, 2.6);
      to.labels()
          .near(to.view().at(m.at()), 1.2 * Symbols.MACHINE, List.of(name), Lettering.bold(2.6));
    }
  }

  /** Whether trucks, power and water come in on this floor. */
  private boolean onGround() {
    return floor == job.request().machineFloor();
  }

  private List<MachineSpot> machines() {
    return job.plan().machines().stream().filter(m -> m.floor() == floor).toList();
  }

  /** Bags stand in the corner of the room that is farthest from the line and from other marks. */
  private void bags(MachineSpot m, double side) {
    if (side < 4 * Symbols.MACHINE) {
      return;
    }
    double off = side / 2 - 1.1 * Symbols.MACHINE;
    Vec2 at = to.view().at(m.at());
    Vec2 best = at;
    for (Vec2 corner :
        List.of(
            new Vec2(off, -off), new Vec2(-off, -off), new Vec2(-off, off), new Vec2(off, off))) {
      Vec2 there = at.plus(corner);
      if (best.equals(at) || clearance(there) > clearance(best) + 1e-6) {
        best = there;
      }
    }
    to.symbols().bags(best);
    to.labels().keepOff(Box.around(best, 1.7 * Symbols.MACHINE, 1.1 * Symbols.MACHINE));
    to.used(LegendItem.BAGS);
  }

  private double clearance(Vec2 p) {
    SiteFacts site = job.request().site();
    return Stream.of(
            FloorLine.of(job.plan(), floor).standing().stream().flatMap(l -> l.path().stream()),
            job.plan().floors().get(floor).cells().stream()
                .map(c -> job.plan().cells().get(c).at()),
            Stream.concat(site.power().stream(), site.water().stream()))
        .flatMap(places -> places)
        .map(to.view()::at)
        .mapToDouble(p::distance)
        .min()
        .orElse(1e9);
  }

  /** What lies off the sheet stands at its edge, with its distance from the machine. */
  private void supply(Vec2 place, String letter, LegendItem item, boolean labelled) {
    Vec2 real = to.view().at(place);
    Vec2 at = to.area().grown(-4).clamp(real);
    to.symbols().supply(at, letter);
    to.labels().keepOff(Box.around(at, 2 * Symbols.SUPPLY, 2 * Symbols.SUPPLY));
    to.used(item);
    if (labelled) {
      String text = measure.about(Length.ofMetres(away(place))) + " to the machine";
      boolean off = at.distance(real) > 1e-6;
      List<String> words = off ? List.of("off the sheet,", text) : List.of(text);
      to.labels().near(at, Symbols.SUPPLY, words, Lettering.plain(2.2));
    }
  }

  /** The distance to the nearest machine of the floor, in metres. */
  private double away(Vec2 place) {
    return machines().stream().mapToDouble(m -> m.at().distance(place)).min().orElse(0);
  }
}
