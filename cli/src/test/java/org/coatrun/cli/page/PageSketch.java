package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.geometry.view.Facets;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** A small page with known contents: a row of bars, one of them with a hostile name. */
final class PageSketch {

  static final String HOSTILE = "<script>alert('x')</script>";

  private static final int[] BOX = {
    0, 2, 3, 1, 4, 5, 7, 6, 0, 1, 5, 4, 2, 6, 7, 3, 0, 4, 6, 2, 1, 3, 7, 5
  };

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
      e.put("covers", new double[0]);
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
      float[] points = new float[3 * BOX.length];
      for (int c = 0; c < BOX.length; c++) {
        points[3 * c] = BOX[c] & 1;
        points[3 * c + 1] = BOX[c] >> 1 & 1;
        points[3 * c + 2] = 3 * (BOX[c] >> 2 & 1);
      }
      boolean[] exposed = {true, true, true, true, true, true};
      block.add(i, PageBody.of(frame, new Facets(points, new int[] {4, 4, 4, 4, 4, 4}, exposed)));
    }
    return block;
  }
}
