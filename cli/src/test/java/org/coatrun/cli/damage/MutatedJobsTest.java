package org.coatrun.cli.damage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.cli.starter.JobStarter;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.listing.DemonstrationListing;
import org.coatrun.shared.model.Building;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever is done to a job file or to a file beside it, a bid and a line by it end in a result or
 * in one sentence; so do readings by a damaged field sheet.
 */
class MutatedJobsTest {

  private static final Path MODELS = Path.of(System.getProperty("coatrun.root"), "test-models");
  private static final Path MODEL = MODELS.resolve("first-try.ifc");
  private static final int EACH = 8;

  private static final String TABLES =
      """
      kind,by,restraint,hours,critical-temperature,factor,thickness
      beam,W/D,restrained,2 h,,0.6,1-1/4 in
      beam,W/D,restrained,2 h,,1.0,1 in
      beam,W/D,unrestrained,2 h,,0.6,1-1/2 in
      beam,W/D,unrestrained,2 h,,1.0,1-1/4 in
      column,W/D,either,2 h,1000 F,0.6,2 in
      column,W/D,either,2 h,1000 F,1.4,1 in
      """;

  private static final String TEMPERATURES =
      """
      time,temperature
      2026-01-05T07:00,38 F
      2026-01-05 12:00,3.5 C
      2026-01-06 07:00,-4 C
      2026-01-07 07:00,50 F
      """;

  private static final String SHEET =
      """
      floor,set,guid,name,kind,section,end,place,where,design,least,reading
      Level 2,1,g1,C-4,column,W12X58,1,1,web,1-1/4 in,1 in,1.25 in
      Level 2,1,g1,"C-4",column,W12X58,1,2,web,1-1/4 in,1 in,1.60
      Level 2,2,g2,'+1,beam,W12X26,1,1,web,22 mm,17 mm,30 mm
      Level 3,3,g3,B-9,beam,W12X26,1,1,web,7/8 in,21/32 in,
      """;

  @TempDir private Path home;

  /** One file to damage, among those that go with it. */
  record Target(String file, String text, String others) {
    @Override
    public String toString() {
      return file;
    }
  }

  static Stream<Target> targets() throws IOException {
    Building building =
        IfcImport.read(List.of(MODEL), ImportOptions.DEFAULT, ProgressListener.silent());
    String starter = String.join("\n", JobStarter.lines(building, UnitSystem.US));
    String demonstration =
        Files.readString(MODELS.resolve("harbour-office.job.yaml"))
            .replace("Level 1", "Ground floor")
            .replace("to: Roof", "to: Ground floor");
    return Stream.of(
        new Target("job.yaml", starter, ""),
        new Target("job.yaml", demonstration, ""),
        new Target(
            "listing.yaml",
            DemonstrationListing.text(),
            "listings: [listing.yaml]\nthickness: {listing: DEMO-15}\n"),
        new Target("tables.csv", TABLES, "listings: [tables.yaml]\n"),
        new Target("warm.csv", TEMPERATURES, "cold: {temperatures: warm.csv}\n"));
  }

  @ParameterizedTest
  @MethodSource("targets")
  void aDamagedJobEndsInAResultOrASentence(Target target) throws IOException {
    Path job = Files.writeString(home.resolve("job.yaml"), target.others());
    Files.writeString(home.resolve("tables.yaml"), "name: T\ntables-file: tables.csv\n");
    Path file = home.resolve(target.file());
    assertThat(attempt(target + ", whole", file, target.text(), "takeoff", job)).isTrue();
    for (int seed = Attempt.FIRST; seed < Attempt.FIRST + EACH * Attempt.TIMES; seed++) {
      String damaged = new TextMutator(seed).damaged(target.text());
      String command = seed % 2 == 0 ? "takeoff" : "line";
      attempt(target + ", seed " + seed, file, damaged, command, job);
    }
  }

  private boolean attempt(String said, Path file, String text, String command, Path job)
      throws IOException {
    Files.writeString(file, text);
    Path out = home.resolve("out");
    return Attempt.run(said, home, out, command, MODEL, "--job", job, "--out", out);
  }

  @Test
  void aDamagedFieldSheetEndsInAResultOrASentence() throws IOException {
    Path sheet = home.resolve("sheet.csv");
    int results = 0;
    for (int seed = Attempt.FIRST; seed < Attempt.FIRST + 12 * EACH * Attempt.TIMES; seed++) {
      Files.writeString(sheet, new TextMutator(seed).damaged(SHEET));
      Path out = home.resolve("out");
      results +=
          Attempt.run("sheet, seed " + seed, home, out, "readings", sheet, "--out", out) ? 1 : 0;
    }
    assertThat(results).describedAs("some damage does no harm").isPositive();
  }
}
