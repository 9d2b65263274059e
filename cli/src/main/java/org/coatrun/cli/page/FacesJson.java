package org.coatrun.cli.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Extent;

/**
 * Where members and decks are and what their faces look like, for drawings made of takeoff.json: in
 * plan the middle line and the box about each, to a tenth of a millimetre; in space the triangles
 * of its faces, whose corners lie on a grid of half a millimetre, coarser for bodies of more than
 * 32 m. Elements that look alike share their triangles.
 */
public final class FacesJson {

  private static final long PER_METRE = 10_000;
  private static final long BILLION = 1_000_000_000;

  private final JsonGenerator json;
  private final NumberList list;
  private final Takeoff takeoff;
  private final PageBodies bodies;
  private final Map<LocalMesh, Integer> numbers = new LinkedHashMap<>();

  private FacesJson(JsonGenerator json, Takeoff takeoff, PageBodies bodies) {
    this.json = json;
    this.list = new NumberList(json);
    this.takeoff = takeoff;
    this.bodies = bodies;
  }

  /** Writes the field {@code faces} into the object that is open. */
  public static void write(JsonGenerator json, Takeoff takeoff, PageBodies bodies)
      throws IOException {
    new FacesJson(json, takeoff, bodies).write();
  }

  private void write() throws IOException {
    json.writeObjectFieldStart("faces");
    Building building = takeoff.building();
    numbers("origin_m", of(building.origin()));
    json.writeArrayFieldStart("elements");
    for (Line line : takeoff.members()) {
      element(line);
    }
    for (Line line : takeoff.decks()) {
      element(line);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("looks");
    for (LocalMesh mesh : numbers.keySet()) {
      look(mesh);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void element(Line line) throws IOException {
    ElementId id = line.identity().id();
    Optional<Extent> extent = takeoff.surfaces().extent(id);
    if (extent.isEmpty()) {
      return;
    }
    json.writeStartObject();
    json.writeStringField("guid", line.identity().guid());
    json.writeNumberField("step", id.step());
    json.writeStringField("file", takeoff.building().fileName(id));
    numbers("line_m", of(extent.get().from(), extent.get().to()));
    numbers("box_m", of(extent.get().low(), extent.get().high()));
    Optional<PageBody> body = bodies.of(id);
    if (body.isPresent()) {
      frame(body.get().frame());
      json.writeFieldName("looks");
      json.writeRawValue(body.get().meshes().stream().map(this::number).toList().toString());
    }
    json.writeEndObject();
  }

  /** Its axes far more finely than its origin: they are multiplied by metres. */
  private void frame(Transform3 frame) throws IOException {
    list.begin();
    metres(of(frame.origin()));
    for (double value : of(frame.x(), frame.y(), frame.z())) {
      list.billionths(Digits.nearest(value * BILLION));
    }
    list.end("frame_m");
  }

  private int number(LocalMesh mesh) {
    return numbers.computeIfAbsent(mesh, m -> numbers.size());
  }

  private void look(LocalMesh mesh) throws IOException {
    WeldedMesh welded = mesh.welded();
    double scale = mesh.scale() * PER_METRE;
    json.writeStartObject();
    list.begin();
    for (short steps : welded.grid()) {
      list.tenThousandths(Digits.nearest(steps * scale));
    }
    list.end("points_m");
    StringBuilder exposed = new StringBuilder();
    list.begin();
    int first = 0;
    for (int f = 0; f < welded.sizes().length; f++) {
      int end = first + welded.sizes()[f];
      for (int last = first + 2; last < end; last++) {
        list.whole(welded.corners()[first]);
        list.whole(welded.corners()[last - 1]);
        list.whole(welded.corners()[last]);
        exposed.append(welded.states()[f] == 0 ? '1' : '0');
      }
      first = end;
    }
    list.end("triangles");
    json.writeStringField("exposed", exposed.toString());
    json.writeEndObject();
  }

  private static double[] of(Vec3... points) {
    double[] all = new double[3 * points.length];
    for (int i = 0; i < points.length; i++) {
      all[3 * i] = points[i].x();
      all[3 * i + 1] = points[i].y();
      all[3 * i + 2] = points[i].z();
    }
    return all;
  }

  private void numbers(String name, double[] values) throws IOException {
    list.begin();
    metres(values);
    list.end(name);
  }

  private void metres(double[] values) {
    for (double value : values) {
      list.tenThousandths(Digits.nearest(value * PER_METRE));
    }
  }
}
