package org.coatrun.shared.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.listing.Listing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordStarterTest {

  private static final Pattern KEY = Pattern.compile("^[ #-]*([a-z0-9-]+):( .*)?$");

  /** A group whose keys all lack defaults must not be left without a value. */
  record Whole(@Key(note = "a part") Part part, @Key(note = "more") List<String> words) {}

  record Part(@Key(note = "a number", least = "1") Optional<Integer> number) {}

  record Lines(
      @Key(note = "words", fallback = "[\"a, b\", \"7\", \"yes # no\", c d]") List<String> words) {}

  @Test
  void readsBackAsTheDefaults() {
    assertThat(Job.parse("job", text(Map.of()))).isEqualTo(Job.defaults());
  }

  @Test
  void readsBackWhatIsFilledIn() {
    Job job =
        Job.parse(
            "job",
            text(
                Map.of(
                    "project.name", RecordStarter.text("Pier 7: \"East\" \\ # wing"),
                    "units", "si",
                    "labour.bands", "[{up-to: 4 m, access: floor}]",
                    "material.waste.joist", "35 %")));
    assertThat(job.project().name()).isEqualTo("Pier 7: \"East\" \\ # wing");
    assertThat(job.units()).isEqualTo(org.coatrun.shared.job.UnitSystem.SI);
    assertThat(job.labour().bands()).hasSize(1);
    assertThat(job.material().waste().joist().fraction()).isEqualTo(0.35);
    assertThat(job.line()).isEqualTo(Job.defaults().line());
  }

  /** The schema says which keys there are; a list inside an entry of a list is named only. */
  @Test
  void hasALineForEachKeyOfTheSchema() throws IOException {
    JsonNode schema = new ObjectMapper().readTree(Job.class.getResourceAsStream("job.schema.json"));
    List<String> keys =
        RecordStarter.lines(Job.class, Map.of(), Map.of()).stream()
            .map(KEY::matcher)
            .filter(java.util.regex.Matcher::matches)
            .map(m -> m.group(1))
            .toList();
    assertThat(keys).hasSize(count(schema)).hasSizeGreaterThan(150);
  }

  private static int count(JsonNode schema) {
    int count = 0;
    for (JsonNode property : schema.path("properties")) {
      count += 1 + count(property) + property.path("items").path("properties").size();
    }
    return count;
  }

  @Test
  void listsReadBackEntryByEntry() {
    String text = String.join("\n", RecordStarter.lines(Lines.class, Map.of(), Map.of()));
    assertThat(RecordReader.read("lines", text, Lines.class).words())
        .containsExactly("a, b", "7", "yes # no", "c d");
  }

  @Test
  void aGroupThatStatesNothingStaysBehindItsMark() {
    List<String> lines = RecordStarter.lines(Whole.class, Map.of(), Map.of());
    assertThat(lines).noneMatch(l -> !l.isEmpty() && !l.strip().startsWith("#"));
    assertThat(RecordReader.read("whole", String.join("\n", lines), Whole.class).part().number())
        .isEmpty();
  }

  @Test
  void worksForListings() {
    List<String> lines = RecordStarter.lines(Listing.class, Map.of("name", "T"), Map.of());
    assertThat(lines).anyMatch(l -> l.startsWith("name: T "));
  }

  @Test
  void remarksStandUnderTheirKey() {
    List<String> lines =
        RecordStarter.lines(Job.class, Map.of(), Map.of("deck.spray", List.of("12 decks")));
    int at = lines.indexOf("  # 12 decks");
    assertThat(lines.get(at - 1)).startsWith("  spray: no ");
    assertThatThrownBy(
            () -> RecordStarter.lines(Job.class, Map.of(), Map.of("deck.colour", List.of("red"))))
        .hasMessage("no such key: [deck.colour]");
  }

  /** Names come from models, which hold anything. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "plain",
        "yes",
        "null",
        "7",
        "a\nb: c",
        "# x",
        "- x",
        "'",
        "\"",
        "\\",
        "{x}",
        "\u0000\u0007\u0085\u2028\uFEFF\uFFFF",
        "Geb\u00E4ude \uD83C\uDFD7",
        "\uD83C"
      })
  void anyTextIsOneLineAndOneValue(String text) {
    String quoted = RecordStarter.text(text);
    assertThat(quoted.lines()).hasSize(1);
    Job job = Job.parse("job", "# " + quoted + "\nproject: {name: " + quoted + "}\nunits: si");
    assertThat(job.project().name()).isNotEmpty();
    assertThat(job.units()).isEqualTo(org.coatrun.shared.job.UnitSystem.SI);
    if (text.codePoints().allMatch(c -> c >= ' ' && Character.isDefined(c) && c != 0x2028)
        && Character.getType(text.codePointAt(0)) != Character.SURROGATE) {
      assertThat(job.project().name()).isEqualTo(text);
    }
  }

  private static String text(Map<String, String> values) {
    return String.join("\n", RecordStarter.lines(Job.class, values, Map.of()));
  }
}
