package org.coatrun.cli.pitfall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.coatrun.cli.report.SurveyScreen;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Status;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.finding.LedgerFinding;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.SectionName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Under what name, length and heading an element stands in the lists. */
class ListedAsTest {

  @TempDir Path folder;

  private static Sketch plate(String schema, String name, String profile) {
    Sketch sketch = new Sketch(schema);
    return sketch
        .add("#101=IFCRECTANGLEPROFILEDEF(.AREA.,%s,$,200.,300.);\n".formatted(profile))
        .swept(100, 101, 12)
        .shape(400, 100)
        .add(
            "#200=IFCPLATE(%s,'%s',$,$,#16,#400,$%s);\n"
                .formatted(sketch.root(), name, sketch.newer(",$")))
        .material(200, "S355");
  }

  /** An end plate is called after its beam; that beam's section is not its own. */
  @ParameterizedTest
  @CsvSource({"End plate W12X26, '', NONE", "PL12X200, PL12X200, NAME"})
  void aPlateIsOfNoRolledSection(String name, String section, SectionName.Source source)
      throws IOException {
    for (String schema : new String[] {"IFC2X3", "IFC4", "IFC4X3"}) {
      Takeoff takeoff = plate(schema, name, "$").takeoff(folder);
      MemberLine line = Sketch.line(takeoff, 200);
      assertThat(line.member().section()).isEqualTo(new SectionName(section, source));
      assertThat(line.outcome().status()).isEqualTo(Status.COUNTED);
    }
  }

  /**
   * Drawn as W12X26 (AISC Shapes Database v15.0), whose 7.65 in2 are 7 % less than W12X28 names.
   */
  @ParameterizedTest
  @CsvSource({"W12X26, 0", "W12X28, 1"})
  void aNameWhoseWeightIsNotThatOfTheDrawingIsSaid(String name, int said) throws IOException {
    Takeoff takeoff =
        new Sketch("IFC4")
            .add(
                "#101=IFCISHAPEPROFILEDEF(.AREA.,'%s',$,165.,310.,5.8,9.7,12.,$,$);\n"
                    .formatted(name))
            .swept(100, 101, 3000)
            .steel(200, 100)
            .takeoff(folder);
    assertThat(takeoff.findings())
        .filteredOn(f -> f.code() == LedgerFinding.WEIGHT_DISAGREES)
        .hasSize(said);
  }

  /** A plate of 200 by 300 by 12 mm, swept through its thickness, is 300 mm long. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aPlateIsAsLongAsItsLongestSide(String schema) throws IOException {
    Takeoff takeoff = plate(schema, "P1", "$").takeoff(folder);
    assertThat(takeoff.memberTotals().length().metres()).isCloseTo(0.3, within(1e-9));
    assertThat(takeoff.memberTotals().weight().kilograms())
        .isCloseTo(7850 * 0.2 * 0.3 * 0.012, within(0.01));
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void whereNothingElseNamesTheSectionAPropertyMay(String schema) throws IOException {
    Sketch sketch = new Sketch(schema).bar(100, 1000).steel(200, 100);
    sketch.add(
        """
        #500=IFCPROPERTYSINGLEVALUE('Reference',$,IFCIDENTIFIER('B-17'),$);
        #501=IFCPROPERTYSINGLEVALUE('Section',$,IFCLABEL('W12x26'),$);
        #502=IFCPROPERTYSET('0000000000000000000502',$,'Structural',$,(#500,#501));
        #503=IFCRELDEFINESBYPROPERTIES('0000000000000000000503',$,$,$,(#200),#502);
        """);
    assertThat(sketch.read(folder).members().get(0).section())
        .isEqualTo(new SectionName("W12X26", SectionName.Source.PROPERTY));
  }

  /** A sheet drawn as plate or member stands in both lists and counts in one. */
  @ParameterizedTest
  @CsvSource({
    "IFC2X3, IFCPLATE", "IFC4, IFCPLATE", "IFC4X3, IFCPLATE",
    "IFC2X3, IFCMEMBER", "IFC4, IFCMEMBER", "IFC4X3, IFCMEMBER"
  })
  void aFlutedSheetCountsWithTheDecks(String schema, String entity) throws IOException {
    Sketch sketch = new Sketch(schema);
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < 20; i++) {
      double x = 150 * (i / 4) + new double[] {0, 60, 75, 135}[i % 4];
      sketch.add("#%d=IFCCARTESIANPOINT((%s,%s));\n".formatted(120 + i, x, i % 4 < 2 ? 0. : 38.));
      points.append(i == 0 ? "#" : ",#").append(120 + i);
    }
    sketch
        .add("#150=IFCPOLYLINE((" + points + "));\n")
        .add("#151=IFCCENTERLINEPROFILEDEF(.CURVE.,$,#150,0.9);\n")
        .swept(100, 151, 3000)
        .shape(400, 100)
        .add(
            "#200=%s(%s,'S1',$,$,#16,#400,$%s);\n"
                .formatted(entity, sketch.root(), sketch.newer(",$")));
    Takeoff takeoff = sketch.takeoff(folder);
    assertThat(takeoff.members()).hasSize(1);
    assertThat(Sketch.line(takeoff, 200).outcome().status()).isEqualTo(Status.LEFT_OUT);
    assertThat(Sketch.line(takeoff, 200).outcome().reason()).contains("deck");
    assertThat(takeoff.decks()).hasSize(1);
    assertThat(takeoff.decks().get(0).deck().form()).isEqualTo(Deck.Form.SHEET);
    assertThat(takeoff.deckTotals().counted()).isEqualTo(1);
    assertThat(takeoff.findings())
        .noneMatch(
            f ->
                f.code() == ModelFinding.DOUBLE_GUID || f.code() == ModelFinding.UNKNOWN_SUBSTANCE);
  }

  /** What carries a deck has the word in its name and is none. */
  @ParameterizedTest
  @CsvSource({"Deck support plate, 0", "Metal deck 76 mm, 1", "Deck plate, 0", "Steel decking, 1"})
  void ofPlatesOnlyPlainWordsMakeDeck(String name, int decks) throws IOException {
    Takeoff takeoff = plate("IFC4", name, "$").takeoff(folder);
    assertThat(takeoff.decks()).hasSize(decks);
    assertThat(takeoff.memberTotals().counted()).isEqualTo(1 - decks);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void theSurveyListsThoseInNoStoreyWhereThereAreAny(boolean stray) throws IOException {
    Sketch sketch =
        new Sketch("IFC4")
            .bar(100, 1000)
            .steel(200, 100)
            .add(
                """
                #300=IFCBUILDINGSTOREY('0000000000000000000300',$,'Level 2',$,$,$,$,$,.ELEMENT.,4000.);
                """);
    if (!stray) {
      sketch.add(
          "#301=IFCRELCONTAINEDINSPATIALSTRUCTURE('0000000000000000000301',$,$,$,(#200),#300);\n");
    }
    String survey = survey(sketch.read(folder));
    assertThat(survey).contains("Level 2");
    assertThat(survey.contains("(no storey)")).isEqualTo(stray);
  }

  private static String survey(Building building) {
    var text = new StringWriter();
    var out = new PrintWriter(text);
    SurveyScreen.print(out, building, UnitSystem.SI);
    out.flush();
    return text.toString();
  }
}
