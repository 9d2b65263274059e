package org.coatrun.cli.line;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.coatrun.cli.report.Column;
import org.coatrun.cli.report.FindingColumns;
import org.coatrun.cli.report.JsonRows;
import org.coatrun.cli.report.Rounded;
import org.coatrun.cli.report.Words;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Proof;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.RiserUse;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** A line plan as JSON: all tables, and the ways of hose and pipe point by point. */
final class LineJson {

  private final JsonGenerator json;
  private final LineResult result;
  private final LinePlan plan;
  private final Vec3 origin;

  private LineJson(JsonGenerator json, LineResult result) {
    this.json = json;
    this.result = result;
    this.plan = result.plan();
    this.origin = result.building().origin();
  }

  static void write(Writer writer, LineResult result) throws IOException {
    try (JsonGenerator json = JsonRows.FORM.createGenerator(writer)) {
      json.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));
      new LineJson(json, result).write();
    }
    writer.write("\n");
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeStringField("result", "line");
    JsonRows.strings(json, "cautions", result.cautions());
    JsonRows.strings(json, "basis", LineBasis.of(result));
    json.writeStringField("building", result.building().name());
    limits();
    proof();
    machines();
    risers();
    floors();
    places();
    JsonRows.rows(json, "spots", LineColumns.spots(result.request(), origin), plan.comparison());
    JsonRows.rows(json, "hardware", LineColumns.hardware(), HardwareRow.of(plan));
    JsonRows.rows(json, "moves", LineColumns.moves(), plan.moves());
    JsonRows.rows(json, "findings", FindingColumns.ALL, result.findings());
    json.writeEndObject();
  }

  private void limits() throws IOException {
    LineLimits l = result.request().limits();
    json.writeObjectFieldStart("limits");
    json.writeObjectField("flexible_m", Rounded.plain(l.flexible().metres()));
    json.writeObjectField("hose_rise_m", Rounded.plain(l.hoseRise().metres()));
    json.writeNumberField("hose_storeys", l.hoseStoreys());
    json.writeObjectField("whip_m", Rounded.plain(l.whip().metres()));
    json.writeObjectField("slack", Rounded.plain(l.slack()));
    json.writeEndObject();
  }

  private void proof() throws IOException {
    Proof p = plan.proof();
    json.writeObjectFieldStart("proof");
    json.writeObjectField("cost", Rounded.plain(p.cost()));
    json.writeObjectField("bound", Rounded.plain(p.bound()));
    json.writeObjectField("gap", Rounded.plain(p.gap()));
    json.writeBooleanField("proven_best", p.optimal());
    json.writeEndObject();
  }

  private void machines() throws IOException {
    json.writeArrayFieldStart("machines");
    for (MachineSpot m : plan.machines()) {
      json.writeStartObject();
      json.writeStringField("name", m.name());
      json.writeStringField("floor", storey(m.floor()));
      point("at", m.at());
      json.writeBooleanField("assumed_ground", onGround(m));
      JsonRows.strings(json, "needs", m.needs());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void risers() throws IOException {
    json.writeArrayFieldStart("risers");
    for (RiserUse r : plan.risers()) {
      json.writeStartObject();
      json.writeStringField("name", r.riser().name());
      json.writeStringField("kind", Words.of(r.riser().kind()));
      json.writeStringField("machine", r.machine());
      json.writeBooleanField("standpipe", r.standpipe());
      json.writeStringField("from", storey(r.from()));
      json.writeStringField("to", storey(r.to()));
      json.writeNumberField("storeys", Math.abs(r.to() - r.from()));
      json.writeObjectField("rise_m", Rounded.plain(r.rise().metres()));
      point("at", r.riser().at());
      legs(r.ground());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void floors() throws IOException {
    json.writeArrayFieldStart("floors");
    for (FloorPlan f : plan.floors()) {
      json.writeStartObject();
      JsonRows.fields(json, FloorColumns.of(result), f);
      regions("plate", f.outline().plate());
      regions("assumed_ground", f.outline().ground());
      regions("free", f.free());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void places() throws IOException {
    List<Column<CellRow>> columns = LineColumns.routes(result.request(), origin);
    json.writeArrayFieldStart("places");
    for (CellRow row : CellRow.of(plan)) {
      json.writeStartObject();
      JsonRows.fields(json, columns, row);
      legs(row.route().map(Route::legs).orElse(List.of()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void legs(List<Leg> legs) throws IOException {
    json.writeArrayFieldStart("legs");
    for (Leg leg : legs) {
      json.writeStartObject();
      json.writeStringField("kind", Words.of(leg.kind()));
      json.writeBooleanField("flexible", leg.kind().flexible());
      json.writeStringField("floor", storey(leg.floor()));
      json.writeObjectField("taut_m", Rounded.plain(leg.taut().metres()));
      json.writeObjectField("laid_m", Rounded.plain(leg.laid().metres()));
      json.writeNumberField("bends", leg.bends());
      ring("path", leg.path());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void regions(String name, List<Region> regions) throws IOException {
    json.writeArrayFieldStart(name);
    for (Region r : regions) {
      json.writeStartObject();
      ring("outline", r.outline());
      json.writeArrayFieldStart("holes");
      for (List<Vec2> hole : r.holes()) {
        points(hole);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void ring(String name, List<Vec2> ring) throws IOException {
    json.writeFieldName(name);
    points(ring);
  }

  private void points(List<Vec2> ring) throws IOException {
    json.writeStartArray();
    for (Vec2 p : ring) {
      coordinates(p);
    }
    json.writeEndArray();
  }

  private void point(String name, Vec2 p) throws IOException {
    json.writeFieldName(name);
    coordinates(p);
  }

  private void coordinates(Vec2 p) throws IOException {
    json.writeStartArray();
    json.writeObject(Rounded.plain(p.x() + origin.x()));
    json.writeObject(Rounded.plain(p.y() + origin.y()));
    json.writeEndArray();
  }

  private boolean onGround(MachineSpot m) {
    return plan.floors().get(m.floor()).outline().onAssumedGround(m.at());
  }

  private String storey(int floor) {
    return plan.floors().get(floor).outline().storey();
  }
}
