package org.coatrun.cli.drawing;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Surface;
import org.coatrun.cli.drawing.paper.Tone;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.KeepOut;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.SlabOpening;
import org.coatrun.shared.shape.Vec2;

/** Draws what stands on a floor: slab, openings, keep-outs, walls, columns. */
final class BuildingLayer {

  private static final double TREAD = 0.28;
  private static final double LEAST_TREAD = 1.1;
  private static final double KEEP_OUT_SPACING = 2.5;

  /** No name covers an opening that is smaller on paper than this, in millimetres. */
  private static final double SMALL = 20;

  private final PlanCanvas to;
  private final Surface on;
  private final View view;

  BuildingLayer(PlanCanvas to) {
    this.to = to;
    this.on = to.on();
    this.view = to.view();
  }

  void draw(FloorOutline floor, List<KeepOut> keepOuts) {
    floor.ground().forEach(this::ground);
    floor.plate().forEach(r -> outline(r, Pen.PLATE, 6, LegendItem.SLAB));
    floor.openings().forEach(this::opening);
    keepOuts.forEach(this::keepOut);
    floor.walls().forEach(r -> solid(r, Tone.MEDIUM, LegendItem.WALL));
    floor.columns().forEach(r -> solid(r, Tone.BLACK, LegendItem.COLUMN));
  }

  /** Names of openings and reasons of keep-outs; after all that matters more. */
  void names(FloorOutline floor, List<KeepOut> keepOuts) {
    floor.openings().stream()
        .map(o -> box(view.at(o.region().outline())))
        .filter(b -> Math.min(b.width(), b.height()) < SMALL)
        .forEach(b -> to.labels().keepOff(b));
    floor.ground().forEach(this::groundName);
    for (SlabOpening o : floor.openings()) {
      if (!o.name().isBlank()) {
        name(o.region(), o.name());
      }
    }
    for (KeepOut k : keepOuts) {
      name(k.region(), k.reason().isBlank() ? "keep-out" : "keep-out: " + k.reason());
    }
  }

  private void groundName(Region region) {
    List<Vec2> ring = view.at(region.outline());
    Vec2 west = Collections.min(ring, Comparator.comparingDouble(p -> p.x() + p.y()));
    to.labels()
        .near(west, 3, List.of("ground assumed,", "level with this floor"), Lettering.plain(2.2));
  }

  private void name(Region region, String text) {
    Box box = box(view.at(region.outline()));
    double radius = Math.min(box.width(), box.height()) / 2;
    String cut = Panel.cut(text, 45, 2.2);
    to.labels().near(box.centre(), radius, List.of(cut), Lettering.plain(2.2));
  }

  private void outline(Region region, Pen pen, double weight, LegendItem item) {
    for (List<Vec2> ring : view.rings(region)) {
      on.line(ring, true, pen);
      to.labels().keepOffRing(ring, weight);
    }
    to.used(item);
  }

  /** Its outer edge; the slab's own edge is its inner one. */
  private void ground(Region region) {
    List<Vec2> ring = view.at(region.outline());
    on.line(ring, true, Pen.GROUND);
    to.labels().keepOffRing(ring, 2);
    to.used(LegendItem.GROUND);
  }

  private void solid(Region region, Tone tone, LegendItem item) {
    on.fill(view.rings(region), tone);
    outline(region, Pen.OUTLINE, 25, item);
  }

  private void opening(SlabOpening opening) {
    List<List<Vec2>> rings = view.rings(opening.region());
    Box box = box(rings.get(0));
    on.fill(rings, Tone.WHITE);
    if (opening.kind() == SlabOpening.Kind.STAIR) {
      treads(rings, box);
      outline(opening.region(), Pen.OUTLINE, 2, LegendItem.STAIR);
    } else {
      diagonal(rings, new Vec2(box.left(), box.top()), new Vec2(box.right(), box.bottom()));
      diagonal(rings, new Vec2(box.left(), box.bottom()), new Vec2(box.right(), box.top()));
      outline(opening.region(), Pen.OUTLINE, 2, LegendItem.OPENING);
    }
  }

  private void diagonal(List<List<Vec2>> rings, Vec2 a, Vec2 b) {
    Hatch.inside(rings, a, b).forEach(piece -> on.line(piece, false, Pen.THIN));
  }

  private void treads(List<List<Vec2>> rings, Box box) {
    double spacing = Math.max(LEAST_TREAD, view.size(TREAD));
    double degrees = box.width() > box.height() ? 90 : 0;
    Hatch.lines(rings, degrees, spacing).forEach(t -> on.line(t, false, Pen.THIN));
  }

  private void keepOut(KeepOut keepOut) {
    List<List<Vec2>> rings = view.rings(keepOut.region());
    Hatch.lines(rings, 45, KEEP_OUT_SPACING).forEach(h -> on.line(h, false, Pen.HATCH));
    outline(keepOut.region(), Pen.KEEP_OUT, 2, LegendItem.KEEP_OUT);
  }

  static Box box(List<Vec2> points) {
    Extent e = Extent.of(points);
    return new Box(e.west(), e.south(), e.east(), e.north());
  }
}
