package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;

/**
 * The direction that a section shows from left to right: the axis of the model along which machines
 * and risers lie farther apart, or else the longer one of the building.
 */
record SectionAxis(boolean alongX) {

  static SectionAxis of(LineRequest request, LinePlan plan) {
    var points = new ArrayList<Vec2>();
    plan.machines().forEach(m -> points.add(m.at()));
    plan.risers().forEach(r -> points.add(r.riser().at()));
    Extent spread = Extent.of(points);
    Extent all = Extent.of(request);
    boolean told = points.size() > 1 && Math.abs(spread.width() - spread.height()) > 1;
    Extent by = told ? spread : all;
    return new SectionAxis(by.width() >= by.height());
  }

  double of(Vec2 p) {
    return alongX ? p.x() : p.y();
  }

  String words() {
    return alongX ? "looking along the Y axis" : "looking along the X axis";
  }

  /** What slabs of a floor take up from left to right, pieces that overlap made one. */
  List<double[]> slabs(FloorOutline floor) {
    List<double[]> pieces =
        floor.plate().stream()
            .map(this::span)
            .sorted((a, b) -> Double.compare(a[0], b[0]))
            .toList();
    var merged = new ArrayList<double[]>();
    for (double[] p : pieces) {
      double[] last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && p[0] <= last[1] + 0.05) {
        last[1] = Math.max(last[1], p[1]);
      } else {
        merged.add(p.clone());
      }
    }
    return merged;
  }

  private double[] span(Region region) {
    double least = region.outline().stream().mapToDouble(this::of).min().orElse(0);
    double most = region.outline().stream().mapToDouble(this::of).max().orElse(0);
    return new double[] {least, most};
  }
}
