package org.coatrun.ifcimport.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.coatrun.ifcimport.part21.StepFile;
import org.coatrun.ifcimport.part21.StepOptions;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.shape.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each thing amiss with a model is said once, with the record that it is about. */
class ModelFindingsTest {

  private static final String BAR =
      """
      #40=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#15,100.,50.);
      #50=IFCEXTRUDEDAREASOLID(#40,#13,#11,1000.);
      """;

  @TempDir Path folder;

  private List<Finding> findings(String schema, String records, ModelFinding code)
      throws IOException {
    return new Snippet(schema, records)
        .read(folder).findings().stream().filter(f -> f.code() == code).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void anEntityOfNoSchemaIsNamedAndCounted(String schema) throws IOException {
    String records =
        Snippet.member(schema, BAR)
            + "#200=IFCSTEELTHING('a',1.);\n#201=IFCSTEELTHING('b',2.);\n"
            + "#202=IFCOWNERHISTORY($,$,$,$,$,$,$,0);\n";
    List<Finding> found = findings(schema, records, ModelFinding.UNKNOWN_ENTITY);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).sentence()).startsWith("2 × IFCSTEELTHING,");
    assertThat(found.get(0).step()).isEqualTo(200);
    assertThat(new Snippet(schema, records).read(folder).members()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"#200=(IFCA(1.);\n", "#200=();\n", "#200=(1.);\n", "#200=((IFCA()));\n"})
  void aRecordOfSeveralKindsThatIsBrokenHasNone(String record) throws IOException {
    var snippet = new Snippet("IFC4", Snippet.member("IFC4", BAR) + record);
    assertThat(snippet.read(folder).members()).hasSize(1);
    try (StepFile file = StepFile.open(snippet.write(folder), StepOptions.DEFAULT)) {
      assertThat(file.entityNames()).contains("IFCMEMBER").doesNotContain("");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void placementsThatGoRoundAreNamedWhoeverStandsByThem(String schema) throws IOException {
    String loop = "#19=IFCLOCALPLACEMENT(#20,#13);\n#20=IFCLOCALPLACEMENT(#19,#13);\n";
    String member = Snippet.member(schema, loop + BAR).replace("#16,#91", "#19,#91");
    List<Finding> found = findings(schema, member, ModelFinding.BROKEN_PLACEMENT);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).step()).isEqualTo(19);
    assertThat(found.get(0).line()).isPositive();

    String wall = "#300=IFCWALLSTANDARDCASE('0000000000000000000300',$,'W',$,$,#20,$,$);\n";
    assertThat(findings(schema, loop + wall, ModelFinding.BROKEN_PLACEMENT)).hasSize(1);
  }

  @Test
  void whatStandsByAPointIsNotPlaced() throws IOException {
    String member = Snippet.member("IFC4", BAR).replace("#16,#91", "#10,#91");
    assertThat(findings("IFC4", member, ModelFinding.BROKEN_PLACEMENT)).hasSize(1);
    assertThat(new Snippet("IFC4", member).read(folder).members().get(0).body().shape())
        .isInstanceOf(Shape.Unsupported.class);
    assertThat(findings("IFC4", Snippet.member("IFC4", BAR), ModelFinding.BROKEN_PLACEMENT))
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void ofSeveralBodiesTheDetailedOneIsTakenAndSaid(String schema) throws IOException {
    String records =
        Snippet.member(schema, BAR).replace("(#90)", "(#92,#90)")
            + "#92=IFCSHAPEREPRESENTATION(#9,'Body','Brep',(#93));\n"
            + "#93=IFCFACETEDBREP($);\n";
    assertThat(findings(schema, records, ModelFinding.SEVERAL_BODIES)).hasSize(1);
    assertThat(new Snippet(schema, records).read(folder).members().get(0).body().shape())
        .isInstanceOf(Shape.Extrusion.class);
    assertThat(findings(schema, Snippet.member(schema, BAR), ModelFinding.SEVERAL_BODIES))
        .isEmpty();
  }

  /** A member of IFC2X3 has 8 attributes, one of IFC4 has 9 (ISO 16739). */
  @Test
  void recordsOfAnotherSchemasLengthAreReadAndSaidOnceForAKind() throws IOException {
    String old = Snippet.member("IFC2X3", BAR);
    String second = "#101=IFCMEMBER('0000000000000000000101',$,'M',$,$,#16,#91,'T2');\n";
    List<Finding> found = findings("IFC4", old + second, ModelFinding.WRONG_SIZE);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).sentence())
        .isEqualTo("#100 is the first IfcMember that has 8 attributes where IFC4 has 9.");
    assertThat(new Snippet("IFC4", old + second).read(folder).members())
        .extracting(m -> m.identity().mark())
        .containsExactly("T1", "T2");
    assertThat(findings("IFC2X3", old + second, ModelFinding.WRONG_SIZE)).isEmpty();
  }
}
