package org.coatrun.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coatrun.geometry.surface.Progress;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.Outcome;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.surface.SurfaceLedger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The faces that takeoff.json carries, drawn by what it says alone, against the ledger. */
class FacesJsonTest {

  private static final Path MODEL =
      Path.of(System.getProperty("coatrun.root"), "test-models/first-try.ifc");

  private static Takeoff takeoff;
  private static JsonNode faces;

  @BeforeAll
  static void takeOff() throws IOException {
    Building building =
        IfcImport.read(List.of(MODEL), ImportOptions.DEFAULT, ProgressListener.silent());
    PageBodies bodies = new PageBodies();
    SurfaceOptions options = SurfaceOptions.defaults().withMeshes(bodies);
    takeoff =
        TakeoffAssembly.assemble(
            building, SurfaceTakeoff.measure(building, options, Progress.silent()));
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartObject();
      FacesJson.write(json, takeoff, bodies);
      json.writeEndObject();
    }
    faces = new JsonMapper().readTree(text.toByteArray()).path("faces");
  }

  /** Shapes stand on a grid of half a millimetre, and chords are shorter than their arcs. */
  @Test
  void inSpaceTheyHaveTheAreasOfTheLedger() {
    Map<Long, SurfaceLedger> ledgers =
        Stream.concat(takeoff.members().stream(), takeoff.decks().stream())
            .map(Line.class::cast)
            .filter(l -> l.outcome() instanceof Outcome.Counted)
            .collect(
                Collectors.toMap(
                    l -> l.identity().id().step(),
                    l -> ((Outcome.Counted) l.outcome()).measured().ledger()));
    assertThat(ledgers).hasSize(20);
    for (Map.Entry<Long, SurfaceLedger> e : ledgers.entrySet()) {
      JsonNode element = element(e.getKey());
      assertThat(area(element, true))
          .isCloseTo(e.getValue().exposed().squareMetres(), withPercentage(1));
      assertThat(area(element, true) + area(element, false))
          .isCloseTo(e.getValue().body().squareMetres(), withPercentage(1));
    }
  }

  /** What is drawn fills the box about it, to half a step of the grid and what rounding takes. */
  @Test
  void standInTheirBoxes() {
    for (JsonNode element : faces.path("elements")) {
      double[] low = {1e9, 1e9, 1e9};
      double[] high = {-1e9, -1e9, -1e9};
      for (JsonNode look : element.path("looks")) {
        JsonNode points = faces.path("looks").get(look.asInt()).path("points_m");
        for (int i = 0; i < points.size(); i += 3) {
          double[] p = placed(element.path("frame_m"), points, i);
          for (int k = 0; k < 3; k++) {
            low[k] = Math.min(low[k], p[k]);
            high[k] = Math.max(high[k], p[k]);
          }
        }
      }
      for (int k = 0; k < 3; k++) {
        assertThat(low[k]).isCloseTo(element.path("box_m").get(k).asDouble(), offset(0.0004));
        assertThat(high[k]).isCloseTo(element.path("box_m").get(3 + k).asDouble(), offset(0.0004));
      }
    }
  }

  private static JsonNode element(long step) {
    for (JsonNode element : faces.path("elements")) {
      if (element.path("step").asLong() == step) {
        return element;
      }
    }
    throw new AssertionError("no faces of #" + step);
  }

  /** The frame's origin and its three axes, on a point of a look. */
  private static double[] placed(JsonNode frame, JsonNode points, int at) {
    double[] p = new double[3];
    for (int k = 0; k < 3; k++) {
      p[k] = frame.get(k).asDouble();
      for (int axis = 0; axis < 3; axis++) {
        p[k] += frame.get(3 + 3 * axis + k).asDouble() * points.get(at + axis).asDouble();
      }
    }
    return p;
  }

  private static double area(JsonNode element, boolean exposed) {
    double sum = 0;
    for (JsonNode number : element.path("looks")) {
      JsonNode look = faces.path("looks").get(number.asInt());
      String flags = look.path("exposed").asText();
      for (int t = 0; t < flags.length(); t++) {
        boolean shows = flags.charAt(t) == '1';
        sum += shows == exposed ? area(look, t) : 0;
      }
    }
    return sum;
  }

  private static double area(JsonNode look, int triangle) {
    double[][] p = new double[3][3];
    for (int c = 0; c < 3; c++) {
      int corner = look.path("triangles").get(3 * triangle + c).asInt();
      for (int k = 0; k < 3; k++) {
        p[c][k] = look.path("points_m").get(3 * corner + k).asDouble();
      }
    }
    double x = cross(p, 1, 2);
    double y = cross(p, 2, 0);
    double z = cross(p, 0, 1);
    return Math.sqrt(x * x + y * y + z * z) / 2;
  }

  private static double cross(double[][] p, int a, int b) {
    return (p[1][a] - p[0][a]) * (p[2][b] - p[0][b]) - (p[1][b] - p[0][b]) * (p[2][a] - p[0][a]);
  }
}
