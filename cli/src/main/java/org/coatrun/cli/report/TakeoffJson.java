package org.coatrun.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Map;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.Totals;
import org.coatrun.shared.model.ModelFile;
import org.coatrun.shared.model.Storey;

/** A takeoff as JSON: the same lines as the CSV files, and their sums. */
final class TakeoffJson {

  private final JsonGenerator json;
  private final Takeoff takeoff;
  private final Results results;

  private TakeoffJson(JsonGenerator json, Results results) {
    this.json = json;
    this.takeoff = results.takeoff();
    this.results = results;
  }

  static void write(OutputStream out, Results results, TakeoffTables tables, JsonPart more)
      throws IOException {
    try (JsonGenerator json = JsonRows.FORM.createGenerator(out)) {
      json.setPrettyPrinter(new RowPrinter());
      new TakeoffJson(json, results).write(tables, more);
      json.writeRaw('\n');
    }
  }

  private void write(TakeoffTables tables, JsonPart more) throws IOException {
    json.writeStartObject();
    json.writeStringField("result", "takeoff");
    JsonRows.strings(json, "cautions", results.cautions());
    JsonRows.strings(json, "basis", results.basis());
    json.writeStringField("building", takeoff.building().name());
    files();
    storeys();
    json.writeObjectFieldStart("totals");
    totals("members", takeoff.memberTotals());
    totals("decks", takeoff.deckTotals());
    json.writeEndObject();
    sums("members_by_storey", "storey", takeoff.membersByStorey());
    sums("members_by_section", "section", takeoff.membersBySection());
    sums("members_by_role", "role", takeoff.membersByRole());
    sums("decks_by_storey", "storey", takeoff.decksByStorey());
    BidSums sums = new BidSums(results);
    if (results.bid().isPresent()) {
      sums("members_by_hours", "hours", sums.byHours(takeoff.members()));
      sums("decks_by_hours", "hours", sums.byHours(takeoff.decks()));
      sums("members_by_rule", "rule", sums.byRule(takeoff.members()));
      sums("decks_by_rule", "rule", sums.byRule(takeoff.decks()));
    }
    if (results.amounts().isPresent()) {
      json.writeObjectFieldStart("bid");
      AmountsJson.write(json, results.amounts().get());
      json.writeEndObject();
    }
    JsonRows.rows(json, "members", tables.members());
    JsonRows.rows(json, "decks", tables.decks());
    JsonRows.rows(json, "findings", tables.findings());
    more.write(json);
    json.writeEndObject();
  }

  private void files() throws IOException {
    json.writeArrayFieldStart("files");
    for (ModelFile file : takeoff.building().files()) {
      json.writeStartObject();
      json.writeStringField("name", file.name());
      json.writeStringField("schema", file.schema());
      json.writeStringField("read_as", file.schemaUsed());
      json.writeStringField("length_unit", file.lengthUnit());
      json.writeNumberField("records", file.records());
      json.writeStringField("written_by", file.application());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void storeys() throws IOException {
    json.writeArrayFieldStart("storeys");
    for (Storey storey : takeoff.building().storeys()) {
      json.writeStartObject();
      json.writeStringField("name", storey.name());
      json.writeStringField("guid", storey.guid());
      json.writeNumberField("elevation_m", Rounded.plain(storey.elevation().metres()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void sums(String name, String key, Map<String, Totals> sums) throws IOException {
    json.writeArrayFieldStart(name);
    for (Map.Entry<String, Totals> sum : sums.entrySet()) {
      json.writeStartObject();
      json.writeStringField(key, sum.getKey());
      fields(sum.getValue());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void totals(String name, Totals totals) throws IOException {
    json.writeObjectFieldStart(name);
    fields(totals);
    json.writeEndObject();
  }

  private void fields(Totals totals) throws IOException {
    json.writeNumberField("all", totals.all());
    json.writeNumberField("counted", totals.counted());
    json.writeNumberField("left_out", totals.leftOut());
    json.writeNumberField("unresolved", totals.unresolved());
    json.writeNumberField("length_m", Rounded.plain(totals.length().metres()));
    json.writeNumberField("weight_kg", Rounded.plain(totals.weight().kilograms()));
    json.writeNumberField("body_m2", Rounded.fine(totals.body().squareMetres()));
    json.writeNumberField("inside_m2", Rounded.fine(totals.inside().squareMetres()));
    json.writeNumberField("ends_m2", Rounded.fine(totals.ends().squareMetres()));
    json.writeNumberField("holes_m2", Rounded.fine(totals.holes().squareMetres()));
    json.writeNumberField("covered_m2", Rounded.fine(totals.covered().squareMetres()));
    json.writeNumberField("exposed_m2", Rounded.fine(totals.exposed().squareMetres()));
  }
}
