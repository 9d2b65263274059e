package org.coatrun.shared.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.stream.Stream;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.yaml.JobFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Broken job files and listings: each gets its one clear sentence, with line and key. */
class BrokenFilesTest {

  static Stream<Arguments> jobs() {
    return Stream.of(
        job("colour: red", "job.yaml line 1, colour: unknown key; known here: project, units,"),
        job(
            "units: us\nbuildng: {}",
            "job.yaml line 2, buildng: unknown key; perhaps 'building' is meant."),
        job(
            "line:\n  flexible-hoze: 250 ft",
            "job.yaml line 2, line.flexible-hoze: unknown key; perhaps 'flexible-hose' is meant."),
        job(
            "line:\n  whip: 25 ft\n  flexible-hose: 250",
            "job.yaml line 3, line.flexible-hose: '250' is not a length; write a number and one of"
                + " ft, in, m, mm."),
        job(
            "line: {flexible-hose: 250 psi}",
            "job.yaml line 1, line.flexible-hose: 'psi' is no unit of a length; use one of ft, in,"
                + " m, mm."),
        job(
            "line: {flexible-hose: -250 ft}",
            "job.yaml line 1, line.flexible-hose: '-250 ft' is impossible here; the least is 10"
                + " ft."),
        job(
            "line: {hose-storeys: 2.5}",
            "job.yaml line 1, line.hose-storeys: '2.5' is not a whole number."),
        job(
            "line: {hose-storeys: three}",
            "job.yaml line 1, line.hose-storeys: 'three' is not a number."),
        job(
            "water: {at-nozzle: 65 ft}",
            "job.yaml line 1, water.at-nozzle: 'ft' is no unit of a pressure; use one of psi, psf,"
                + " bar, kPa."),
        job(
            "water: {hose: 7/8 in}",
            "job.yaml line 1, water.hose: '7/8 in' is not known here; use one of 3/4 in, 1 in,"),
        job(
            "material: {density: 15 lb}",
            "job.yaml line 1, material.density: 'lb' is no unit of a density; use one of pcf,"
                + " kg/m3."),
        job(
            "material: {density: 1500 pcf}",
            "job.yaml line 1, material.density: '1500 pcf' is impossible here; the most is 100"
                + " pcf."),
        job(
            "material: {waste: 10 %}",
            "job.yaml line 1, material.waste: a group of keys belongs here, each with its value."),
        job(
            "material:\n  waste:\n    beam: 10",
            "job.yaml line 3, material.waste.beam: '10' is not a share; write a number and one of"
                + " %."),
        job(
            "material: {waste: {beam: 100 %}}",
            "job.yaml line 1, material.waste.beam: '100 %' is impossible here; the most is 90 %."),
        job(
            "material: {bag: 2000 lb, truckload: 1000 lb}",
            "job.yaml line 1, material: a truckload must carry at least one bag."),
        job(
            "material: {shelf-life: 6 months}",
            "job.yaml line 1, material.shelf-life: '6 months' needs a number and the unit days."),
        job(
            "material: {order: volume}",
            "job.yaml line 1, material.order: 'volume' is not known here; use one of area,"
                + " offset."),
        job(
            "machine: {rate: 25}",
            "job.yaml line 1, machine.rate: '25' needs a number and the unit bags/h."),
        job(
            "machine: {rate: 0 bags/h}",
            "job.yaml line 1, machine.rate: '0 bags/h' is impossible here; the least is 1 bags/h."),
        job(
            "machine:\n  rate:",
            "job.yaml line 2, machine.rate: the key has no value; give one or leave the key out."),
        job(
            "building: {type: I-C}",
            "job.yaml line 1, building.type: 'I-C' is not known here; use one of I-A, I-B, II-A,"),
        job(
            "building: {occupancy: S}",
            "job.yaml line 1, building.occupancy: 'S' is not known here; use one of A, B, E, F-1,"),
        job(
            "building: {height: tall}",
            "job.yaml line 1, building.height: 'tall' is not a length; write a number and one of"
                + " ft, in, m, mm."),
        job(
            "building: I-A",
            "job.yaml line 1, building: a group of keys belongs here, each with its value."),
        job(
            "ratings: {hours: 2 h}",
            "job.yaml line 1, ratings: a list belongs here: [a, b] or one '- ' a line."),
        job(
            "ratings:\n  - {hours: 2 h}\n  - {storey: Level 1}",
            "job.yaml line 3, ratings[2]: the rule states nothing; give hours, coat, restrained,"
                + " listing or thickness."),
        job(
            "ratings:\n  - {hours: 9 h}",
            "job.yaml line 2, ratings[1].hours: '9 h' is impossible here; the most is 4 h."),
        job(
            "ratings:\n  - {hours: 2 hrs}",
            "job.yaml line 2, ratings[1].hours: 'hrs' is no unit of a fire rating; use one of h,"
                + " min."),
        job(
            "ratings:\n  - {role: girder, hours: 2 h}",
            "job.yaml line 2, ratings[1].role: 'girder' is not known here; use one of column,"),
        job(
            "ratings:\n  - {zone: [[0 ft, 0 ft], [9 ft, 0 ft]], hours: 2 h}",
            "job.yaml line 2, ratings[1]: a zone needs at least three corners."),
        job(
            "ratings:\n  - {zone: [[0 ft], [9 ft, 0 ft], [9 ft, 9 ft]], hours: 2 h}",
            "job.yaml line 2, ratings[1].zone[1]: a point is two lengths: [12 ft, 30 ft]."),
        job(
            "deck: {spray: perhaps}",
            "job.yaml line 1, deck.spray: 'perhaps' is neither yes nor no."),
        job(
            "deck: {pitch: 6 in, top-opening: 7 in}",
            "job.yaml line 1, deck: a deck's rib opening lies between its bottom width and its"
                + " pitch."),
        job("listings: [a.yaml, a.yaml]", "job.yaml line 1: a listing file is named twice."),
        job("labour:\n  bands: []", "job.yaml line 2, labour: at least one height band is needed."),
        job(
            "labour: {bands: [{up-to: 20 ft, access: lift}, {up-to: 10 ft, access: floor}]}",
            "job.yaml line 1, labour: height bands must rise from one to the next."),
        job(
            "labour: {bands: [{access: lift}]}",
            "job.yaml line 1, labour.bands[1].up-to: this key is missing and must be given."),
        job("prices: {bag: $14}", "job.yaml line 1, prices.bag: '$14' is not a number."),
        job(
            "programme: {start: 03/02/2026}",
            "job.yaml line 1, programme.start: '03/02/2026' is not a date; write year-month-day,"
                + " such as 2026-03-02."),
        job(
            "programme: {days: []}",
            "job.yaml line 1, programme: at least one working day is needed."),
        job("alternates: [{name: a}, {name: a}]", "job.yaml line 1: two alternates share a name."),
        job(
            "site: {keep-outs: [{name: crane}]}",
            "job.yaml line 1, site.keep-outs[1]: a zone needs at least three corners."),
        job("units: us\nunits: si", "job.yaml line 2, units: this key stands twice; keep one."),
        job("units: us\n---\nunits: si", "a second document begins here; keep one document"),
        job(
            "units: &u us\nproject: {name: *u}",
            "anchors (&) and aliases (*) are not used here; write the value out."),
        job("units: !!str us", "tags (!) are not used here; write the value without one."),
        job("line: {whip: 25 ft", "not valid YAML: "),
        job("line:\n\twhip: 25 ft", "not valid YAML: "),
        job("- units: us", "a group of keys belongs here, each with its value."),
        job("project: {name: ''}", "project.name: a text of 1 to 500 characters belongs here."),
        job("units: \u0001us", "job.yaml line 1: the file holds control characters"),
        job("x: " + "[".repeat(40) + "]".repeat(40), "the file is nested deeper than 24 levels."));
  }

  static Stream<Arguments> listings() {
    String table = "name: T\ntables:\n  - {kinds: [beam], by: W/D, hours: 2 h, rows: [%s]}\n";
    return Stream.of(
        job("tables: []", "list.yaml line 1, name: this key is missing and must be given."),
        job(
            "name: T",
            "list.yaml: the listing holds no table, equation, beam or deck to take thickness"
                + " from."),
        job(
            String.format(table, ""),
            "list.yaml line 3, tables[1]: a table needs at least one row."),
        job(
            String.format(table, "{factor: 1, thickness: 1 in}, {factor: 1, thickness: 2 in}"),
            "list.yaml line 3, tables[1]: two rows for the factor 1."),
        job(
            String.format(table, "{factor: 0, thickness: 1 in}"),
            "list.yaml line 3, tables[1].rows[1].factor: '0' is impossible here; the least is"
                + " 0.0001."),
        job(
            String.format(table, "{factor: 1, thickness: 1}"),
            "list.yaml line 3, tables[1].rows[1].thickness: '1' is not a length; write a number"),
        job(
            String.format(table, "{factor: 1}"),
            "list.yaml line 3, tables[1].rows[1].thickness: this key is missing and must be"
                + " given."),
        job(
            "name: T\ntables: [{kinds: [beam], by: W_D, hours: 2 h}]",
            "list.yaml line 2, tables[1].by: 'W_D' is not known here; use one of W/D, A/P, Hp/A."),
        job(
            "name: T\ntables: [{kinds: [], by: W/D, hours: 2 h}]",
            "list.yaml line 2, tables[1]: a table names at least one kind of member."),
        job(
            "name: T\ncolumn-equations: [{c1: 1, c2: 2, smallest: 3, largest: 2}]",
            "list.yaml line 2, column-equations[1]: a column equation needs c1 above 0 and a range"
                + " of W/D that rises."),
        job(
            "name: T\ncolumn-equations: [{c1: 1, c2: -9, smallest: 1, largest: 2}]",
            "list.yaml line 2, column-equations[1]: C1 (W/D) + C2 is not positive over the tested"
                + " range."),
        job(
            "name: T\ncolumn-equations: [{c1: 9, c2: 9, smallest: 1, largest: 2, from-hours: 3 h,"
                + " to-hours: 2 h}]",
            "list.yaml line 2, column-equations[1]: from-hours must not lie above to-hours."),
        job(
            "name: T\nrounding: eighth-inch",
            "list.yaml line 2, rounding: 'eighth-inch' is not known here; use one of"
                + " sixteenth-inch, millimetre, none."),
        job(
            "name: T\ntables-file: ../../secrets.csv",
            "list.yaml, tables-file: '../../secrets.csv' is not a plain file name beside the"
                + " listing."));
  }

  static Stream<Arguments> tables() {
    String head = "kind,by,restraint,hours,critical-temperature,factor,thickness\n";
    return Stream.of(
        job("", "tables.csv line 1: the file is empty; its first line names the columns."),
        job("kind,by\nbeam,W/D", "tables.csv line 1, critical-temperature: this column is missing"),
        job(
            head + "beam,W/D,either,2 h,,0.5",
            "tables.csv line 2: this row has 6 cells, the header 7."),
        job(
            head + "slab,W/D,either,2 h,,0.5,1 in",
            "tables.csv line 2, kind: 'slab' is not known here; use one of column,"),
        job(
            head + "beam,W/D,either,2 h,,half,1 in",
            "tables.csv line 2, factor: 'half' is not a number."),
        job(
            head + "\nbeam,W/D,either,2 h,,0.5,1 lb",
            "tables.csv line 3, thickness: 'lb' is no unit of a length;"),
        job(
            head + "beam,W/D,either,2 h,,0.5,1 in\nbeam,W/D,either,2 h,,0.5,1 in",
            "tables.csv line 2: in the table that begins here: two rows for the factor 0.5."),
        job(head + "beam,\"W/D,either", "tables.csv line 2: a quote opens here and is never"));
  }

  private static Arguments job(String text, String sentence) {
    return Arguments.of(text, sentence);
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("jobs")
  void brokenJobs(String text, String sentence) {
    check(
        catchThrowableOfType(JobFileException.class, () -> Job.parse("job.yaml", text)), sentence);
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("listings")
  void brokenListings(String text, String sentence) {
    check(
        catchThrowableOfType(
            JobFileException.class, () -> Listing.parse("list.yaml", text, f -> "")),
        sentence);
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("tables")
  void brokenTables(String csv, String sentence) {
    check(
        catchThrowableOfType(
            JobFileException.class,
            () -> Listing.parse("list.yaml", "name: T\ntables-file: tables.csv", f -> csv)),
        sentence);
  }

  /** Entity bombs grow by aliases; the first anchor is already refused. */
  @Test
  void aliasBombsAreRefusedAtTheirFirstAnchor() {
    String bomb = "a: &a [x, x, x]\nb: &b [*a, *a, *a]\nc: [*b, *b, *b]";
    JobFileException fault =
        catchThrowableOfType(JobFileException.class, () -> Job.parse("job.yaml", bomb));
    assertThat(fault.line()).isEqualTo(1);
    assertThat(fault.sentence()).contains("anchors");
  }

  @Test
  void hugeFilesAreRefused() {
    String huge = "#".repeat(2_000_001);
    assertThat(
            catchThrowableOfType(JobFileException.class, () -> Job.parse("job.yaml", huge))
                .sentence())
        .isEqualTo("the file is longer than 2 million characters.");
  }

  private static void check(JobFileException fault, String sentence) {
    assertThat(fault).as("accepted, but should say: " + sentence).isNotNull();
    assertThat(fault.getMessage()).contains(sentence).doesNotContain("\n").endsWith(".");
    assertThat(fault.sentence()).doesNotContain("Exception").doesNotContain("org.coatrun");
  }
}
