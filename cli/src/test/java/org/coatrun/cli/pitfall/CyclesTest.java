package org.coatrun.cli.pitfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.coatrun.shared.estimate.Status;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.finding.FindingCode;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.finding.SurfaceFinding;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Records that refer to themselves, over any number of others, and records that use each other so
 * often that following them would never end: a finding each, and whatever else there is counts.
 */
class CyclesTest {

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aBooleanOfItself(String schema) throws IOException {
    for (String second : new String[] {"#300", "#301"}) {
      requireEndless(
          beside(schema)
              .add("#300=IFCBOOLEANRESULT(.DIFFERENCE.,#100,%s);\n".formatted(second))
              .add("#301=IFCBOOLEANRESULT(.UNION.,#302,#100);\n#302=IFCCSGSOLID(#300);\n")
              .steel(400, 300));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aMappedItemOfItself(String schema) throws IOException {
    for (String inner : new String[] {"#310", "#310,#310", "#310,#320", "#320,#100"}) {
      requireEndless(
          beside(schema)
              .add(mapped(310, inner))
              .add(mapped(320, "#310"))
              .steel(400, 310)
              .steel(420, 320));
    }
  }

  /** Each uses the next one twice: 2^60 bars. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void itemsThatDoubleSixtyTimes(String schema) throws IOException {
    Sketch maps = beside(schema);
    Sketch booleans = beside(schema);
    for (int i = 0; i < 60; i++) {
      int at = 1000 + 10 * i;
      String next = i == 59 ? "#100" : "#" + (at + 10);
      maps.add(mapped(at, next + "," + next));
      booleans.add("#%d=IFCBOOLEANRESULT(.UNION.,%s,%s);\n".formatted(at, next, next));
    }
    requireEndless(maps.steel(400, 1000));
    requireEndless(booleans.steel(400, 1000));
  }

  /** What is deep but ends is measured: a hundred uses of one bar, each of the one before. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void whatIsDeepButEndsIsMeasured(String schema) throws IOException {
    Sketch sketch = new Sketch(schema).bar(100, 1000);
    for (int i = 0; i < 100; i++) {
      sketch.add(mapped(1000 + 10 * i, i == 99 ? "#100" : "#" + (1010 + 10 * i)));
    }
    Takeoff takeoff = sketch.steel(400, 1000).takeoff(folder);
    assertThat(Sketch.line(takeoff, 400).outcome().status()).isEqualTo(Status.COUNTED);
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aPlacementByItself(String schema) throws IOException {
    for (String parent : new String[] {"#300", "#301"}) {
      Takeoff takeoff =
          beside(schema)
              .add("#300=IFCLOCALPLACEMENT(%s,#13);\n".formatted(parent))
              .add("#301=IFCLOCALPLACEMENT(#300,#13);\n")
              .member(400, 100, 300)
              .material(400, "Steel")
              .takeoff(folder);
      requireFinding(takeoff, ModelFinding.BROKEN_PLACEMENT);
      assertThat(Sketch.line(takeoff, 400).outcome().status()).isEqualTo(Status.UNRESOLVED);
    }
  }

  /** A grid that stands where two of its own axes cross. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aGridThatStandsByItself(String schema) throws IOException {
    Sketch sketch = beside(schema);
    boolean newest = schema.equals("IFC4X3");
    Takeoff takeoff =
        sketch
            .add(
                """
                #301=IFCCARTESIANPOINT((0.,0.));
                #302=IFCCARTESIANPOINT((9000.,0.));
                #303=IFCCARTESIANPOINT((0.,9000.));
                #304=IFCPOLYLINE((#301,#302));
                #305=IFCPOLYLINE((#301,#303));
                #306=IFCGRIDAXIS('A',#304,.T.);
                #307=IFCGRIDAXIS('1',#305,.T.);
                #308=IFCVIRTUALGRIDINTERSECTION((#306,#307),(0.,0.,0.));
                """)
            .add("#309=IFCGRIDPLACEMENT(%s#308,$);\n".formatted(newest ? "$," : ""))
            .add(
                "#310=IFCGRID(%s,'G',$,$,#309,$,(#306),(#307),$%s);\n"
                    .formatted(sketch.root(), sketch.newer(",$")))
            .member(400, 100, 309)
            .material(400, "Steel")
            .takeoff(folder);
    requireFinding(takeoff, ModelFinding.BROKEN_PLACEMENT);
    assertThat(Sketch.line(takeoff, 400).outcome().status()).isEqualTo(Status.UNRESOLVED);
  }

  /** A whole among its parts has no whole, and its own body counts. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aPartOfItself(String schema) throws IOException {
    for (String relation : new String[] {"IFCRELAGGREGATES", "IFCRELNESTS"}) {
      for (int steps = 1; steps < 4; steps++) {
        Sketch sketch = beside(schema);
        for (int i = 0; i < 3; i++) {
          sketch.add(placed(300 + 10 * i, 1000 * (i + 1)));
          sketch.member(400 + 20 * i, 100, 300 + 10 * i).material(400 + 20 * i, "Steel");
        }
        for (int i = 0; i < steps; i++) {
          int whole = 400 + 20 * i;
          int part = 400 + 20 * ((i + 1) % steps);
          sketch.add(
              "#%d=%s(%s,$,$,#%d,(#%d));\n"
                  .formatted(500 + i, relation, sketch.root(), whole, part));
        }
        Takeoff takeoff = sketch.takeoff(folder);
        requireFinding(takeoff, ModelFinding.STRUCTURE_CYCLE);
        assertThat(takeoff.members())
            .hasSize(4)
            .allMatch(line -> line.outcome().status() == Status.COUNTED);
        assertThat(takeoff.building().members().get(1).identity().assembly()).isEmpty();
      }
    }
  }

  /** A profile made of itself, and a curve of itself. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aProfileOfItself(String schema) throws IOException {
    Sketch profile =
        beside(schema)
            .add("#300=IFCCOMPOSITEPROFILEDEF(.AREA.,'P',(#300,#300),$);\n")
            .swept(302, 300, 1000)
            .steel(400, 302);
    requireEndless(profile);
    Sketch curve =
        beside(schema)
            .add("#300=IFCCOMPOSITECURVE((#301,#301),.F.);\n")
            .add("#301=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#300);\n")
            .add("#303=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,'P',#300);\n")
            .swept(302, 303, 1000)
            .steel(400, 302);
    requireEndless(curve);
  }

  /** A model with a sound bar, #200, of the body #100. */
  private static Sketch beside(String schema) {
    return new Sketch(schema).bar(100, 1000).steel(200, 100);
  }

  /** A placement aside; the two numbers after are taken. */
  private static String placed(int number, int aside) {
    return """
    #%1$d=IFCLOCALPLACEMENT($,#%2$d);
    #%2$d=IFCAXIS2PLACEMENT3D(#%3$d,$,$);
    #%3$d=IFCCARTESIANPOINT((%4$d.,0.,0.));
    """
        .formatted(number, number + 1, number + 2, aside);
  }

  /** A mapped item whose shared shape is made of some items; the three numbers after are taken. */
  private static String mapped(int number, String items) {
    return """
    #%1$d=IFCMAPPEDITEM(#%2$d,#%4$d);
    #%2$d=IFCREPRESENTATIONMAP(#13,#%3$d);
    #%3$d=IFCSHAPEREPRESENTATION(#9,'Body','MappedRepresentation',(%5$s));
    #%4$d=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#10,$,$);
    """
        .formatted(number, number + 1, number + 2, number + 3, items);
  }

  private void requireEndless(Sketch sketch) throws IOException {
    Takeoff takeoff = sketch.takeoff(folder);
    requireFinding(takeoff, SurfaceFinding.ENDLESS_BODY);
    assertThat(Sketch.line(takeoff, 400).outcome().status()).isEqualTo(Status.UNRESOLVED);
    assertThat(Sketch.line(takeoff, 400).outcome().reason()).contains("refers to itself");
    assertThat(Sketch.line(takeoff, 200).outcome())
        .isEqualTo(Sketch.line(beside("IFC4").takeoff(folder), 200).outcome());
  }

  private static void requireFinding(Takeoff takeoff, FindingCode code) {
    assertThat(takeoff.findings()).extracting(f -> f.code()).contains(code);
  }
}
