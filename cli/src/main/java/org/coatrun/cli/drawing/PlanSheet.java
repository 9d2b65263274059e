package org.coatrun.cli.drawing;

import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Recording;
import org.coatrun.cli.drawing.paper.Surface;
import org.coatrun.routing.line.HoseReach;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.KeepOut;
import org.coatrun.shared.shape.Vec2;

/** Lays out the plan of one floor. */
final class PlanSheet {

  private final DrawingJob job;
  private final Fit fit;
  private final View view;
  private final HoseReach reach;

  /**
   * @param extent of all floors, so that one lies over the other
   */
  PlanSheet(DrawingJob job, Fit fit, Extent extent) {
    this.job = job;
    this.fit = fit;
    this.reach = new HoseReach(job.request(), job.plan());
    this.view = View.centred(fit.scale(), extent, SheetFrame.drawing(fit.paper()));
  }

  Sheet draw(int floor, SheetTitle title, String file) {
    var marks = new Recording();
    PlanCanvas to = new PlanCanvas(marks, view, SheetFrame.drawing(fit.paper()));
    FloorPlan here = job.plan().floors().get(floor);
    furniture(to);
    layers(to, floor, here);
    Box panel = SheetFrame.panel(fit.paper());
    double legend = Legend.draw(marks, panel, to.used(), job.cautions());
    new FloorFacts(job, here).write(new Panel(marks, panel), legend);
    SheetFrame.draw(marks, fit, title);
    return new Sheet(file, title.subject(), fit.paper(), marks);
  }

  private void layers(PlanCanvas to, int floor, FloorPlan here) {
    List<KeepOut> keepOuts =
        job.request().keepOuts().stream()
            .filter(k -> k.storey().equals(here.outline().storey()))
            .toList();
    var building = new BuildingLayer(to);
    var work = new WorkLayer(to, job);
    var machine = new MachineLayer(to, job, floor);
    var line = new LineLayer(to, job, floor);
    var edge = reach.edge(floor);
    building.draw(here.outline(), keepOuts);
    work.steel(floor);
    machine.rooms();
    line.reach(edge);
    line.lines();
    work.cells(here);
    line.marks();
    machine.marks();
    new Dimensions(to, new Measure(job.units())).draw(here.outline().plate(), line.places());
    new LineLabels(to, job, floor).write();
    machine.labels();
    building.names(here.outline(), keepOuts);
  }

  /** Scale bar and axes, in the lower left corner. */
  private void furniture(PlanCanvas to) {
    Box area = to.area();
    Vec2 bar = new Vec2(area.left() + 26, area.bottom() - 8);
    to.labels().keepOff(ScaleBar.draw(to.on(), bar, view, new Measure(job.units())));
    Vec2 origin = new Vec2(area.left() + 6, area.bottom() - 5);
    arrow(to.on(), origin, new Vec2(0, -8), "Y");
    arrow(to.on(), origin, new Vec2(8, 0), "X");
    to.labels().keepOff(new Box(origin.x() - 4, origin.y() - 13, origin.x() + 13, origin.y() + 4));
  }

  private static void arrow(Surface on, Vec2 from, Vec2 way, String name) {
    Vec2 tip = from.plus(way);
    Vec2 back = way.unit().times(-2);
    Vec2 side = way.unit().left().times(0.7);
    on.line(List.of(from, tip), false, Pen.OUTLINE);
    on.line(
        List.of(tip.plus(back).plus(side), tip, tip.plus(back).minus(side)), false, Pen.OUTLINE);
    Vec2 text = tip.plus(way.unit().times(1.8)).plus(new Vec2(0, 0.9));
    on.text(text, name, Lettering.plain(2.4).centred(), 0);
  }
}
