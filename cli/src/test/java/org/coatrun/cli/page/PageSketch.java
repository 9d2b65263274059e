package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** A small page with known contents: a row of bars, one of them with a hostile name. */
final class PageSketch {

  static final String HOSTILE = "<script>alert('x')</script>";

  private PageSketch() {}

  static PageContent content(int bars) {
    return content(bars, Map.of());
  }

  static PageContent content(int bars, Map<String, Object> line) {
    List<Map<String, Object>> elements = new ArrayList<>();
    for (int i = 0; i < bars; i++) {
      Map<String, Object> e = new LinkedHashMap<>();
      e.put("kind", "member");
      e.put("level", i % 2);
      e.put("guid", "guid-" + i);
      e.put("step", 10 + i);
      e.put("mark", "B-" + i);
      e.put("name", i == 1 ? HOSTILE : "bar");
      e.put("status", i % 3 == 2 ? "left out" : "counted");
      e.put("exposed", 1.5 + i);
      e.put("covers", List.of());
      elements.add(e);
    }
    return new PageContent(
        "Sketch " + HOSTILE,
        bars + " bars",
        "si",
        List.of("Level 1", "Level 2"),
        List.of(
            PageColumn.text("mark", "Mark"),
            PageColumn.text("name", "Name"),
            PageColumn.text("status", "Status").categories("counted", "left out", "unresolved"),
            PageColumn.number("exposed", "Exposed", "area").summed().sequence()),
        elements,
        List.of(PageColumn.text("code", "Code"), PageColumn.text("sentence", "Finding")),
        List.of(
            Map.of(
                "code",
                "F301",
                "severity",
                "note",
                "sentence",
                "A finding.",
                "remedy",
                "Look.",
                "element",
                2)),
        line,
        List.of(new PageContent.PageProse("Cautions", List.of("A planning aid."))),
        "A planning aid.",
        List.of(),
        List.of());
  }

  static GeometryBlock geometry(int bars) {
    GeometryBlock block = new GeometryBlock();
    for (int i = 0; i < bars; i++) {
      Transform3 frame = Transform3.translation(new Vec3(2.0 * (i % 50), 4, 0));
      double[] points = new double[24];
      for (int v = 0; v < 8; v++) {
        points[3 * v] = v & 1;
        points[3 * v + 1] = v >> 1 & 1;
        points[3 * v + 2] = 3 * (v >> 2 & 1);
      }
      int[] corners = {
        0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1,
        3, 5, 3, 7, 5
      };
      block.add(i, PageBody.of(frame, new PageMesh(points, corners, new byte[12])));
    }
    return block;
  }
}
