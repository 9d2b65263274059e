package org.coatrun.cli.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.KeepOut;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;

/** The line as the page reads it: floors once, and for each choice what runs over them. */
final class LineContent {

  private LineContent() {}

  /** Floors and choices; empty where there is none. */
  static Map<String, Object> of(LineRequest request, List<LineChoice> choices) {
    if (choices.isEmpty() || request.floors().isEmpty()) {
      return Map.of();
    }
    Map<String, Object> line = new LinkedHashMap<>();
    line.put("floors", request.floors().stream().map(f -> floor(f, request)).toList());
    line.put("choices", choices.stream().map(ChoiceContent::of).toList());
    return line;
  }

  private static Map<String, Object> floor(FloorOutline f, LineRequest request) {
    Map<String, Object> floor = new LinkedHashMap<>();
    floor.put("name", f.storey());
    floor.put("elevation", f.elevation().metres());
    floor.put("plate", regions(f.plate().stream()));
    floor.put("walls", regions(f.walls().stream()));
    floor.put("columns", regions(f.columns().stream()));
    floor.put(
        "openings",
        f.openings().stream()
            .map(o -> new TreeMap<>(Map.of("name", o.name(), "region", region(o.region()))))
            .toList());
    floor.put(
        "keepOuts",
        request.keepOuts().stream()
            .filter(k -> k.storey().equals(f.storey()))
            .map(LineContent::keepOut)
            .toList());
    return floor;
  }

  private static Map<String, Object> keepOut(KeepOut k) {
    return new TreeMap<>(Map.of("reason", k.reason(), "region", region(k.region())));
  }

  private static List<Map<String, Object>> regions(Stream<Region> regions) {
    return regions.map(LineContent::region).toList();
  }

  private static Map<String, Object> region(Region r) {
    return new TreeMap<>(
        Map.of(
            "outline",
            points(r.outline()),
            "holes",
            r.holes().stream().map(LineContent::points).toList()));
  }

  /** Points on centimetres. */
  static List<double[]> points(List<Vec2> points) {
    return points.stream().map(LineContent::point).toList();
  }

  static double[] point(Vec2 p) {
    return new double[] {Math.rint(p.x() * 100) / 100, Math.rint(p.y() * 100) / 100};
  }
}
