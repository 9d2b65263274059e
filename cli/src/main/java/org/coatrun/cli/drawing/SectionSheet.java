package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Paper;
import org.coatrun.cli.drawing.paper.Recording;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.shape.Vec2;

/** Lays out the section through the risers. */
final class SectionSheet {

  private static final double HEAD = 12;
  private static final double FOOT = 16;

  private final DrawingJob job;
  private final SectionAxis axis;

  SectionSheet(DrawingJob job) {
    this.job = job;
    this.axis = SectionAxis.of(job.request(), job.plan());
  }

  Sheet draw(SheetTitle title, Paper paper) {
    var marks = new Recording();
    Box area = SheetFrame.drawing(paper);
    Box room =
        new Box(
            area.left() + SectionRows.LEFT,
            area.top() + HEAD,
            area.right() - SectionRows.RIGHT,
            area.bottom() - FOOT);
    Extent extent = extent();
    Fit fit = Fit.within(paper, room, job.units(), extent.width(), extent.height());
    PlanCanvas to = new PlanCanvas(marks, View.centred(fit.scale(), extent, room), room.grown(8));
    building(to, room, extent, area);
    ScaleBar.draw(
        marks, new Vec2(area.left() + 8, area.bottom() - 8), to.view(), new Measure(job.units()));
    Box panel = SheetFrame.panel(paper);
    double legend = Legend.draw(marks, panel, to.used(), job.cautions());
    new SectionFacts(job).write(new Panel(marks, panel), legend, axis);
    SheetFrame.draw(marks, fit, title);
    return new Sheet("section", title.subject(), paper, marks);
  }

  private void building(PlanCanvas to, Box room, Extent extent, Box area) {
    var layer = new SectionLayer(to, job, axis);
    layer.levels(room);
    layer.slabs();
    layer.lines();
    layer.machines();
    var places = new SectionPlaces(job, axis, to.view());
    var levels = new ArrayList<Double>();
    for (int f = 0; f < job.request().floors().size(); f++) {
      levels.add(places.level(f));
    }
    Vec2 west = to.view().at(new Vec2(extent.west(), 0));
    Vec2 east = to.view().at(new Vec2(extent.east(), 0));
    Box building = new Box(west.x(), area.top(), east.x(), area.bottom());
    new SectionRows(to.on(), job, area).write(levels, building);
    layer.levelWords(room);
    layer.labels();
  }

  private Extent extent() {
    List<FloorOutline> floors = job.request().floors();
    var points = new ArrayList<Vec2>();
    for (FloorOutline f : floors) {
      for (double[] s : axis.slabs(f)) {
        points.add(new Vec2(s[0], f.elevation().metres()));
        points.add(new Vec2(s[1], f.elevation().plus(f.height()).metres()));
      }
    }
    return Extent.of(points);
  }
}
