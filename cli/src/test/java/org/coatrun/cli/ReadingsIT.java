package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.coatrun.cli.Program.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The packaged program reads a field sheet back and judges it. */
class ReadingsIT {

  /**
   * C-4, design 1-1/4 in, readings 1.25, 1.60, 1.10, 1.30: 1.60 counts as 1.50 (ASTM E605 8.1), the
   * average is 1.2875 and no reading is under 1.00, so the averaging rule passes; one of four is
   * under the design, so the 10 % rule (IBC 2018 1705.14.4) fails.
   */
  private static final String SHEET =
      """
      floor,set,guid,name,kind,section,end,place,where,design,least,reading
      Level 2,1,g1,C-4,column,W12X58,1,1,web,1-1/4 in,1 in,1.25 in
      Level 2,1,g1,C-4,column,W12X58,1,2,web,1-1/4 in,1 in,1.60
      Level 2,1,g1,C-4,column,W12X58,1,3,web,1-1/4 in,1 in,1.10 in
      Level 2,1,g1,C-4,column,W12X58,2,1,web,1-1/4 in,1 in,1.30 in
      Level 2,2,g2,B-1,beam,W12X26,1,1,web,7/8 in,21/32 in,7/8 in
      Level 2,2,g2,B-1,beam,W12X26,1,2,web,7/8 in,21/32 in,15/16 in
      Level 3,3,g3,B-9,beam,W12X26,1,1,web,7/8 in,21/32 in,
      """;

  @TempDir private Path home;

  @Test
  void judgesASheet() throws Exception {
    Path out = home.resolve("judged");
    Run run = Program.run("readings", sheet(SHEET), "--out", out);

    assertThat(run.exitCode()).describedAs(run.err()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out().lines().map(line -> line.replaceAll(" +", " ")))
        .contains(
            "Level 2 C-4 W12X58 passes fails 1 1.250 4 0 1.000 1.100 1.288 1",
            "Level 2 B-1 W12X26 passes passes 2 0.875 2 0 0.656 0.875 0.906 0",
            "Level 2 passes fails 2 0 6 0 1",
            "Level 3 not read not read 1 1 0 1 0",
            " Level 2, C-4: 1 of 4 readings under the design, over 10 %");
    List<Map<String, String>> judged = TakeoffResult.csv(out.resolve("judged.csv"));
    assertThat(judged).hasSize(3);
    assertThat(judged.get(0))
        .containsEntry("averaging_rule", "passes")
        .containsEntry("ten_percent_rule", "fails")
        .containsEntry("average_mm", "32.7025");
    assertThat(judged.get(2)).containsEntry("averaging_rule", "not read");
    assertThat(TakeoffResult.csv(out.resolve("respray.csv")))
        .singleElement()
        .satisfies(row -> assertThat(row).containsEntry("name", "C-4"));
  }

  /** The field sheet of a takeoff, each reading at the design but those of one member. */
  @Test
  void judgesTheFieldSheetOfATakeoff() throws Exception {
    Path folder = home.resolve("takeoff");
    Path job = Program.ROOT.resolve("test-models/harbour-office.job.yaml");
    Program.run("takeoff", Program.DEMO, "--job", job, "--out", folder);
    Path handedOut = folder.resolve("inspection.csv");
    List<Map<String, String>> rows = TakeoffResult.csv(handedOut);
    List<String> lines = Files.readAllLines(handedOut);
    List<String> filled = new ArrayList<>(List.of(lines.get(0)));
    for (int i = 0; i < rows.size(); i++) {
      boolean thin = rows.get(i).get("set").equals("1");
      filled.add(lines.get(i + 1) + (thin ? "1/4 in" : rows.get(i).get("design")));
    }
    Path back = Files.write(home.resolve("back.csv"), filled);
    Path out = home.resolve("judged");
    Run run = Program.run("readings", back, "--job", job, "--out", out);

    assertThat(run.exitCode()).describedAs(run.err()).isZero();
    List<Map<String, String>> judged = TakeoffResult.csv(out.resolve("judged.csv"));
    assertThat(judged)
        .hasSizeGreaterThan(50)
        .allSatisfy(
            set -> {
              String verdict = set.get("set").equals("1") ? "fails" : "passes";
              assertThat(set).containsEntry("averaging_rule", verdict);
              assertThat(set).containsEntry("ten_percent_rule", verdict);
              assertThat(set).containsEntry("blank", "0");
            });
    assertThat(TakeoffResult.csv(out.resolve("respray.csv"))).hasSize(1);
  }

  /** Our own files put an apostrophe before what a spreadsheet would take for a formula. */
  @Test
  void aMarkThatLooksLikeAFormulaComesBackAsItWas() throws Exception {
    assertThat(Program.run("readings", sheet(SHEET.replace(",B-9,", ",'+9,"))).out())
        .contains("  +9  ")
        .doesNotContain("'+9");
  }

  @Test
  void takesItsUnitsFromTheJobFile() throws Exception {
    Path job = Files.writeString(home.resolve("job.yaml"), "units: si\n");

    assertThat(Program.run("readings", sheet(SHEET), "--job", job).out())
        .contains("Design, mm", "31.8");
    assertThat(Program.run("readings", sheet(SHEET), "--job", job, "--units", "us").out())
        .contains("Design, in", "1.250");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.10 in   | thin      | ' line 4, reading: ''thin'' is not a length; write a number'",
        "1.10 in   | 1.10 lb   | ' line 4, reading: ''lb'' is no unit of a length; use one of'",
        "1.10 in   | -1 in     | ' line 4, reading: ''-1 in'' cannot be the thickness of a coat.'",
        "1.10 in   | 1,10 in   | ' line 4: this row has 13 cells, the header 12.'",
        "',1,3,web' | ',1,2,web' | ' line 4, place: end 1 place 2 of set 1 stands on line 3 already.'",
        "reading   | thickness | ' line 1, reading: this column is missing; there are: '",
        "'C-4'     | '\"C-4'   | ' line 3: text follows a closing quote; add a comma.'"
      })
  void aBrokenSheetIsOneSentenceAndNothingIsWritten(String good, String bad, String sentence)
      throws Exception {
    Path sheet = sheet(SHEET.replace(good, bad));
    refuses(sheet + sentence, sheet);
  }

  @Test
  void refusesWhatIsNoSheet() throws Exception {
    Path binary = Files.write(home.resolve("sheet.xls"), new byte[] {(byte) 0xD0, (byte) 0xCF, 0});
    refuses("cannot read " + binary + ": it is not plain text in UTF-8; save it as that", binary);
    refuses("cannot read " + home + ": it is a folder; name a file", home);
    Path missing = home.resolve("missing.csv");
    refuses("cannot read " + missing + ": it does not exist", missing);
    Path job = Files.writeString(home.resolve("job.yaml"), "units: imperial\n");
    refuses(
        job + " line 1, units: 'imperial' is not known here; use one of us, si.",
        sheet(SHEET),
        "--job",
        job);
  }

  private Path sheet(String text) throws Exception {
    return Files.writeString(home.resolve("sheet.csv"), text);
  }

  private void refuses(String sentence, Object... arguments) throws Exception {
    Path out = home.resolve("results");
    Object[] all = new Object[arguments.length + 3];
    all[0] = "readings";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    all[all.length - 2] = "--out";
    all[all.length - 1] = out;
    Run run = Program.run(all);

    assertThat(run.exitCode()).describedAs(run.err()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("coatrun: " + sentence).doesNotContain("Exception");
    assertThat(run.err().lines()).hasSize(1);
    assertThat(out).doesNotExist();
  }
}
