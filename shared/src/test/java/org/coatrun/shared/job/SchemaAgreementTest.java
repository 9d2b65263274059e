package org.coatrun.shared.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.yaml.JobFileException;
import org.coatrun.shared.yaml.SchemaCheck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Editors and the program say the same of random files: what the program reads, the schema accepts;
 * what the schema accepts, the program refuses only for what a schema cannot say.
 */
class SchemaAgreementTest {

  private static final int FILES = 4000;

  private static final String TABLE =
      "kind,by,restraint,hours,critical-temperature,factor,thickness\nbeam,W/D,either,2 h,,1,1 in";

  private static final List<String> VALUES =
      List.of(
          """
          25 ft | 250ft | 7-1/4 in | 12 ft 6 in | 40 mm | 2 m | 65 psi | 3 bar | 2 h | 90 min
          15 pcf | 240 kg/m3 | 50 lb | 22,000 lb | 30 % | 40 F | 4 °C | 15 in2 | 900 ft2
          12 gal/min | 55 gal | 24 bags/h | 400 bf/h | 180 days | 8 h | 480 V | 60 A | 3 | 2.5
          -1 | 0 | 1000000 | yes | no | true | maybe | us | I-B | B | north | [north, south]
          beam | [beam, column] | primary | W/D | restrained | sixteenth-inch | monday
          [tuesday] | 2026-03-02 | tomorrow | "6" | 3/4 in | lift | area | [] | {}
          [1 ft, 2 ft] | [1 ft] | [[0 m, 0 m], [9 m, 0 m], [9 m, 9 m]] | text | '' | 25 lbs
          25 FT | 1,00 ft | [a.yaml]
          """
              .strip()
              .split(" \\| |\n"));

  /** What a schema can say: keys, words, units, kinds of value. Bounds it cannot. */
  private static final String WITHIN_A_SCHEMA =
      ".*(unknown key|not known here|no unit of|write a number|a number and the unit|must be given"
          + "|a group of keys belongs|a list belongs|neither yes nor no|is not a number"
          + "|is not a whole number|is not a plain number|two lengths|not valid YAML).*";

  @ParameterizedTest
  @CsvSource({"job/job.schema.json, 11", "listing/listing.schema.json, 12"})
  void whatTheProgramReadsTheSchemaAccepts(String resource, long start) throws Exception {
    JsonNode schema = new ObjectMapper().readTree(JobTest.resource(resource));
    boolean job = resource.startsWith("job");
    Consumer<String> reader =
        job
            ? text -> Job.parse("job.yaml", text)
            : text -> Listing.parse("list.yaml", text, file -> TABLE);
    Random random = new Random(start);
    int read = 0;
    int refused = 0;
    for (int i = 0; i < FILES; i++) {
      String text =
          group(schema, random, job ? "" : "name: T, decks: [{hours: 1 h, thickness: 1 in}], ");
      String fault = fault(reader, text);
      boolean accepted = SchemaCheck.accepts(schema, text);
      if (fault.isEmpty()) {
        assertThat(accepted).as("read, but not by the schema: " + text).isTrue();
        read++;
      } else if (accepted) {
        assertThat(fault).as("accepted by the schema: " + text).doesNotMatch(WITHIN_A_SCHEMA);
      } else {
        refused++;
      }
    }
    assertThat(read).isGreaterThan(FILES / 20);
    assertThat(refused).isGreaterThan(FILES / 5);
  }

  private static String fault(Consumer<String> reader, String text) {
    try {
      reader.accept(text);
      return "";
    } catch (JobFileException e) {
      return e.getMessage();
    }
  }

  /** A group with one or two of its keys, each with a value of its own kind more often than not. */
  private static String group(JsonNode schema, Random random, String before) {
    List<String> names = new ArrayList<>();
    schema.get("properties").fieldNames().forEachRemaining(names::add);
    StringBuilder text = new StringBuilder("{").append(before);
    String first = names.get(random.nextInt(names.size()));
    text.append(before.contains(first + ":") ? "" : pair(schema, first, random));
    for (Iterator<JsonNode> r = schema.path("required").elements(); r.hasNext(); ) {
      String name = r.next().asText();
      if (!name.equals(first) && !before.contains(name + ":") && random.nextInt(20) > 0) {
        text.append(pair(schema, name, random));
      }
    }
    return text.append("}").toString();
  }

  private static String pair(JsonNode schema, String name, Random random) {
    String key = random.nextInt(40) == 0 ? name + "s" : name;
    return key + ": " + value(schema.get("properties").get(name), random) + ", ";
  }

  private static String value(JsonNode schema, Random random) {
    if (random.nextInt(12) > 0 && schema.has("properties")) {
      return group(schema, random, "");
    }
    if (random.nextInt(12) > 0 && schema.has("items")) {
      return "[" + value(schema.get("items"), random) + "]";
    }
    for (int tries = 0; tries < 200 && random.nextInt(60) > 0; tries++) {
      String any = any(random);
      if (SchemaCheck.accepts(schema, any)) {
        return any;
      }
    }
    return any(random);
  }

  private static String any(Random random) {
    return VALUES.get(random.nextInt(VALUES.size()));
  }
}
