package org.coatrun.shared.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.rules.ConstructionType;
import org.coatrun.shared.rules.HoseSize;
import org.coatrun.shared.rules.Occupancy;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.yaml.RecordSchema;
import org.coatrun.shared.yaml.SchemaCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JobTest {

  private static final String FULL =
      """
      project: {name: Harbour Exchange, number: 26-014, notes: [night work on level 3]}
      units: us
      building: {type: I-A, occupancy: S-1, height: 96 ft}
      ratings:
        - {label: penthouse, storey: 'Level 4*', hours: 1 h, reason: engineer of record}
        - {section: 'HSS*', role: column, frame-class: primary, hours: 90 min}
        - {zone: [[0 ft, 0 ft], [30 ft, 0 ft], [30 ft, 20 ft]], coat: no}
      deck: {spray: yes, depth: 2 in, top-opening: 7 in, bottom-width: 5 in}
      listings: [demo.yaml]
      material: {bag: 50 lb, density: 15 pcf, waste: {joist: 30 %}, shelf-life: 180 days}
      machine: {rate: 30 bags/h, machines: 2}
      labour:
        crew: 4
        bands:
          - {up-to: 12 ft, access: floor, factor: 1}
          - {up-to: 30 ft, access: lift, factor: 1.4}
      prices: {currency: USD, bag: 18.5}
      alternates:
        - {name: deck sprayed, spray-deck: yes}
      programme: {start: 2026-03-02, days: [monday, tuesday], storage: 900 ft2}
      cold: {least: 40 \u00B0F}
      line: {flexible-hose: 250 ft, hose-rise: 36 ft}
      water: {at-nozzle: 65 psi, hose: 3/4 in, supply-flow: 12 gal/min}
      power: {volts: 480 V, conductor: "6"}
      site:
        machine-spots: [{name: yard, at: [12 m, -30 ft]}]
        access-sides: [north]
      """;

  @Test
  void defaultsAreThoseOfTheTrade() {
    Job job = Job.defaults();
    assertThat(job.line().flexibleHose().feet()).isCloseTo(250, within(1e-9));
    assertThat(job.line().hoseRise().feet()).isCloseTo(36, within(1e-9));
    assertThat(job.line().hoseStoreys()).isEqualTo(3);
    assertThat(job.water().atNozzle().psi()).isCloseTo(65, within(1e-9));
    assertThat(job.cold().least().fahrenheit()).isCloseTo(40, within(1e-9));
    assertThat(job.air().changes()).isEqualTo(4);
    assertThat(job.material().waterRatio()).isEqualTo(1.2);
    assertThat(job.deck().spray()).isFalse();
    assertThat(job.labour().bands()).hasSize(4);
    assertThat(job.building().type()).isEmpty();
  }

  @Test
  void readsAFullFile() {
    Job job = Job.parse("job.yaml", FULL);
    assertThat(job.building().type()).contains(ConstructionType.IA);
    assertThat(job.building().occupancy()).contains(Occupancy.S_1);
    assertThat(job.ratings()).hasSize(3);
    assertThat(job.ratings().get(1).frameClass()).contains(FrameClass.PRIMARY);
    assertThat(job.ratings().get(2).zone().get(2).x()).isCloseTo(30 * 0.3048, within(1e-12));
    assertThat(job.ratings().get(2).coat()).contains(false);
    assertThat(job.material().waste().joist().fraction()).isCloseTo(0.3, within(1e-12));
    assertThat(job.machine().rate()).isEqualTo(30);
    assertThat(job.water().hose()).isEqualTo(HoseSize.THREE_QUARTERS);
    Vec2 yard = job.site().machineSpots().get(0).at();
    assertThat(yard).isEqualTo(new Vec2(12, -30 * 0.3048));
  }

  @ParameterizedTest
  @CsvSource({
    "org.coatrun.shared.job.Job, job/job.schema.json, Coatrun job file",
    "org.coatrun.shared.listing.Listing, listing/listing.schema.json, Coatrun listing"
  })
  void theSchemaHasTheKeysOfTheRecords(Class<? extends Record> type, String resource, String title)
      throws IOException {
    String made =
        new ObjectMapper()
                .enable(SerializationFeature.INDENT_OUTPUT)
                .writeValueAsString(RecordSchema.of(type, title))
            + "\n";
    if (Boolean.getBoolean("coatrun.write.schema")) {
      Files.writeString(Path.of("src/main/resources/org/coatrun/shared").resolve(resource), made);
    }
    assertThat(made)
        .as("write it anew with -Dcoatrun.write.schema=true when keys change")
        .isEqualTo(resource(resource));
  }

  @Test
  void theSchemaAcceptsWhatTheReaderAccepts() throws IOException {
    JsonNode schema = new ObjectMapper().readTree(resource("job/job.schema.json"));
    assertThat(SchemaCheck.accepts(schema, FULL)).isTrue();
    assertThat(SchemaCheck.accepts(schema, "{}")).isTrue();
    JsonNode listing = new ObjectMapper().readTree(resource("listing/listing.schema.json"));
    assertThat(SchemaCheck.accepts(listing, resource("listing/demonstration.yaml"))).isTrue();
    assertThat(Listing.parse("demo", resource("listing/demonstration.yaml"), f -> "")).isNotNull();
  }

  /** Files that both refuse: wrong key, kind, word, unit, shape. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "colour: red",
        "building: {type: I-X}",
        "building: {height: 12}",
        "building: {height: 12 lb}",
        "building: [I-A]",
        "line: {flexible-hose: 250ft2}",
        "machine: {rate: 30}",
        "machine: {rate: 30 bags}",
        "machine: {machines: two}",
        "machine: {machines: 2.5}",
        "deck: {spray: maybe}",
        "ratings: {hours: 1 h}",
        "listings: demo.yaml",
        "site: {machine-spots: [{name: yard}]}",
        "site: {machine-spots: [{name: yard, at: [1 ft]}]}",
        "site: {machine-spots: [{name: yard, at: [1 ft, 2 ft, 3 ft]}]}",
        "programme: {start: tomorrow}",
        "prices: {bag: -1}",
        "power: {conductor: 7}"
      })
  void theSchemaRefusesWhatTheReaderRefuses(String yaml) throws IOException {
    JsonNode schema = new ObjectMapper().readTree(resource("job/job.schema.json"));
    assertThat(SchemaCheck.accepts(schema, yaml)).isFalse();
    org.junit.jupiter.api.Assertions.assertThrows(
        org.coatrun.shared.yaml.JobFileException.class, () -> Job.parse("job.yaml", yaml));
  }

  static String resource(String name) throws IOException {
    try (InputStream in = Job.class.getResourceAsStream("/org/coatrun/shared/" + name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
