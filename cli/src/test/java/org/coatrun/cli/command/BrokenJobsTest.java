package org.coatrun.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Job files, and listings beside them, that the takeoff cannot use: one sentence that names file,
 * line and key, and nothing written.
 */
class BrokenJobsTest {

  private static final Path MODEL =
      Path.of(System.getProperty("coatrun.root"), "test-models", "first-try.ifc");

  private static final String LISTING = "name: T\ndecks: [{hours: 1 h, thickness: 1/2 in}]\n";

  @TempDir private Path home;

  /** A text with what the sentence must hold. */
  record Broken(String text, String words) {
    @Override
    public String toString() {
      return words;
    }
  }

  private static Broken job(String text, String words) {
    return new Broken(text, words);
  }

  static Stream<Broken> jobs() {
    return Stream.of(
        job("colour: red", "line 1, colour: unknown key"),
        job("buildng: {}", "perhaps 'building' is meant"),
        job("units: imperial", "line 1, units: 'imperial' is not known here"),
        job("units: [us]", "line 1, units: "),
        job("project: {name: ''}", "project.name: "),
        job("project: {name: a, owner: b}", "project.owner: unknown key"),
        job("building: {type: I-C}", "building.type: 'I-C' is not known here"),
        job("building: {occupancy: S}", "building.occupancy: 'S' is not known here"),
        job("building: {height: tall}", "building.height: 'tall' is not a length"),
        job("building: I-A", "line 1, building: a group of keys belongs here"),
        job("building: {roof-relief: perhaps}", "building.roof-relief: "),
        job("ratings: {hours: 2 h}", "line 1, ratings: a list belongs here"),
        job("ratings:\n  - {storey: Level 1}", "line 2, ratings[1]: the rule states nothing"),
        job("ratings:\n  - {hours: 9 h}", "ratings[1].hours: '9 h' is impossible here"),
        job("ratings:\n  - {hours: 2 hrs}", "'hrs' is no unit of a fire rating"),
        job("ratings:\n  - {hours: 2}", "ratings[1].hours: "),
        job("ratings:\n  - {role: girder, hours: 2 h}", "ratings[1].role: 'girder' is not known"),
        job("ratings:\n  - {frame-class: main, hours: 2 h}", "ratings[1].frame-class: 'main'"),
        job("ratings:\n  - {zone: [[0 m, 0 m], [9 m, 0 m]], hours: 2 h}", "at least three corners"),
        job("ratings:\n  - {thickness: 2 ft}", "ratings[1].thickness: '2 ft' is impossible here"),
        job("ratings:\n  - {hours: 2 h, listing: NONE}", "line 2, ratings: no listing is called"),
        job("thickness: {listing: NONE}", "line 1, thickness.listing: no listing is called 'NONE'"),
        job("thickness: {critical-temperature: 900 C}", "thickness.critical-temperature: '900 C'"),
        job(
            "thickness: {restrained: maybe}",
            "thickness.restrained: 'maybe' is neither yes nor no"),
        job("alternates: [{name: a}, {name: a}]", "two alternates share a name"),
        job("alternates: [{spray-deck: yes}]", "alternates[1].name: this key is missing"),
        job("alternates: [{name: a, listing: B}]", "alternates: no listing is called 'B'"),
        job("listings: [nowhere.yaml]", "line 1, listings: no file 'nowhere.yaml' stands beside"),
        job("listings: [../up.yaml]", "line 1, listings: '../up.yaml' is not a plain file name"),
        job("listings: [/etc/passwd]", "listings: '/etc/passwd' is not a plain file name"),
        job("listings: [list.yaml, list.yaml]", "a listing file is named twice"),
        job("listings: [list.yaml, same.yaml]", "a second listing is called 'T'"),
        job("listings: [empty.yaml]", "empty.yaml line 1, name: this key is missing"),
        job("listings: [hollow.yaml]", "hollow.yaml: the listing holds no table, equation, beam"),
        job("listings: [typo.yaml]", "typo.yaml line 2, decks[1].thickness: '1/2' is not a length"),
        job("listings: [twice.yaml]", "twice.yaml line 3, tables[1]: two rows for the factor 1"),
        job("listings: [table.yaml]", "table.yaml, tables-file: cannot read "),
        job("listings: [latin.yaml]", "latin.yaml: it is not plain text in UTF-8"),
        job("exposure: {contact-gap: 1 m}", "exposure.contact-gap: '1 m' is impossible here"),
        job("exposure: {hole-threshold: 15 in}", "'in' is no unit of an area"),
        job("deck: {pitch: 6 in, top-opening: 7 in}", "line 1, deck: a deck's rib opening"),
        job("deck: {spray: perhaps}", "deck.spray: 'perhaps' is neither yes nor no"),
        job("material: {density: 15 lb}", "material.density: 'lb' is no unit of a density"),
        job("material: {waste: {beam: 100 %}}", "material.waste.beam: '100 %' is impossible"),
        job("machine: {rate: 25}", "machine.rate: '25' needs a number and the unit bags/h"),
        job("labour: {bands: []}", "line 1, labour: at least one height band is needed"),
        job("prices: {bag: $14}", "prices.bag: '$14' is not a number"),
        job("programme: {start: 03/02/2026}", "programme.start: '03/02/2026' is not a date"),
        job("cold: {temperatures: t.csv}", "cold.temperatures: no file 't.csv' stands beside"),
        job("cold: {temperatures: warm.csv}", "warm.csv line 2, temperature: "),
        job("units: us\nunits: si", "line 2, units: this key stands twice"),
        job("units: us\n---\nunits: si", "a second document begins here"),
        job("units: &u us\nproject: {name: *u}", "anchors (&) and aliases (*) are not used here"),
        job("line: {whip: 25 ft", "not valid YAML"),
        job("line:\n\twhip: 25 ft", "not valid YAML"),
        job("units: \u0001us", "the file holds control characters"),
        job("x: " + "[".repeat(40) + "]".repeat(40), "the file is nested deeper than 24 levels"));
  }

  @Test
  void thereAreFiftyAndMore() {
    assertThat(jobs().count()).isGreaterThanOrEqualTo(50);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void refusesABrokenJobWithOneSentence(Broken broken) throws IOException {
    besideTheJob();
    Path job = Files.writeString(home.resolve("job.yaml"), broken.text());
    refuses(job, broken.words());
  }

  @Test
  void refusesAJobFileThatIsNoneWithOneSentence() throws IOException {
    refuses(home.resolve("missing.yaml"), "it does not exist");
    refuses(Files.createDirectory(home.resolve("folder.yaml")), "it is a folder; name a file");
    byte[] binary = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, 0x75};
    refuses(Files.write(home.resolve("binary.yaml"), binary), "not plain text in UTF-8");
  }

  private void besideTheJob() throws IOException {
    Files.writeString(home.resolve("list.yaml"), LISTING);
    Files.writeString(home.resolve("same.yaml"), LISTING);
    Files.writeString(home.resolve("empty.yaml"), "");
    Files.writeString(home.resolve("hollow.yaml"), "name: T");
    Files.writeString(
        home.resolve("typo.yaml"), "name: T\ndecks: [{hours: 1 h, thickness: 1/2}]\n");
    Files.writeString(
        home.resolve("twice.yaml"),
        "name: T\ntables:\n  - {kinds: [beam], by: W/D, hours: 2 h, rows: [{factor: 1, thickness: 1"
            + " in}, {factor: 1, thickness: 2 in}]}\n");
    Files.writeString(home.resolve("table.yaml"), "name: T\ntables-file: gone.csv\n");
    byte[] latin = {'n', 'a', 'm', 'e', ':', ' ', (byte) 0xe9, '\n'};
    Files.write(home.resolve("latin.yaml"), latin);
    Files.writeString(home.resolve("warm.csv"), "time,temperature\n2026-03-02 07:00,warm\n");
  }

  private void refuses(Path job, String words) throws IOException {
    List<String> before = names();
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Path results = home.resolve("results");
    int exitCode =
        CoatrunCommand.commandLine(new PrintWriter(out), new PrintWriter(err))
            .execute(
                "takeoff", MODEL.toString(), "--job", job.toString(), "--out", results.toString());

    assertThat(exitCode).describedAs(err.toString()).isEqualTo(3);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString().lines()).describedAs(err.toString()).hasSize(1);
    assertThat(err.toString())
        .startsWith("coatrun: ")
        .contains(words)
        .doesNotContain("Exception", "\tat ");
    assertThat(names()).isEqualTo(before);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(home)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
