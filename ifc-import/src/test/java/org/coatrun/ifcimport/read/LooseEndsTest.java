package org.coatrun.ifcimport.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.coatrun.shared.finding.FileFinding;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.FindingCode;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Shape;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** References to records that there are not, or are of a wrong kind; values of no kind. */
class LooseEndsTest {

  private static final String BAR =
      """
      #40=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,100.,50.);
      #50=IFCEXTRUDEDAREASOLID(#40,#13,#11,1000.);
      """;

  @TempDir Path folder;

  private Building read(String schema, String records) throws IOException {
    return new Snippet(schema, records).read(folder);
  }

  private static String member(String schema, String body, String more) {
    return Snippet.member(schema, body) + more;
  }

  private static String steel(String schema, String related) {
    String name = schema.equals("IFC2X3") ? "'Steel'" : "'Steel',$,$";
    return "#70=IFCMATERIAL("
        + name
        + ");\n#71=IFCRELASSOCIATESMATERIAL('0000000000000000000071',$,$,$,("
        + related
        + "),#70);\n";
  }

  private static List<String> said(Building building, FindingCode code) {
    return building.findings().stream()
        .filter(f -> f.code() == code)
        .map(Finding::sentence)
        .toList();
  }

  /** A list with a gap: what stands beside the gap keeps what is its own. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aGapInAListIsSaidAndShiftsNothing(String schema) throws IOException {
    String second =
        Snippet.member(schema, "").lines().filter(l -> l.startsWith("#100=")).findFirst().get();
    Building b =
        read(
            schema,
            member(schema, BAR, steel(schema, "#999,#100"))
                + second.replace("#100=", "#101=").replace("0100'", "0101'")
                + "\n");

    assertThat(said(b, FileFinding.DANGLING_REFERENCE))
        .containsExactly("#71 IfcRelAssociatesMaterial refers to #999, which no record carries.");
    assertThat(b.members())
        .extracting(m -> m.classification().substance())
        .containsExactly(Substance.STEEL, Substance.UNKNOWN);
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aMissingPropertyKeepsNoOtherFromSpeaking(String schema) throws IOException {
    String set =
        """
        #60=IFCPROPERTYSINGLEVALUE('FireRating',$,IFCLABEL('2 h'),$);
        #61=IFCPROPERTYSET('0000000000000000000061',$,'Pset',$,(#998,#60));
        #62=IFCRELDEFINESBYPROPERTIES('0000000000000000000062',$,$,$,(#100),#61);
        """;
    Member m = read(schema, member(schema, BAR, set)).members().get(0);

    assertThat(m.properties().text("FireRating")).contains("2 h");
  }

  /** The finding of a body names the element; its words are alike for all written alike. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "#50=IFCEXTRUDEDAREASOLID(#999,#13,#11,1000.);\n",
        "#50=IFCEXTRUDEDAREASOLID(#40,#10,#11,1000.);\n",
        "#50=IFCEXTRUDEDAREASOLID($,#13,#11,1000.);\n",
        "#50=IFCEXTRUDEDAREASOLID(#12,#13,#11,IFCNOVALUE(1000.,2.));\n",
      })
  void aBodyThatCannotBeReadStaysWithItsElement(String body) throws IOException {
    String whole = BAR.replace("#50=", "#51=");
    String second =
        """
        #80=IFCSHAPEREPRESENTATION(#9,'Body','SweptSolid',(#51));
        #81=IFCPRODUCTDEFINITIONSHAPE($,$,(#80));
        #101=IFCMEMBER('0000000000000000000101',$,'M',$,$,#16,#81,'T2',$);
        """;
    Building b = read("IFC4", member("IFC4", body, whole + second));

    assertThat(b.members()).hasSize(2);
    assertThat(b.members().get(0).body().shape()).isInstanceOf(Shape.Unsupported.class);
    assertThat(((Shape.Unsupported) b.members().get(0).body().shape()).detail())
        .startsWith("Ifc")
        .contains(": ")
        .doesNotContain("#");
    assertThat(b.members().get(1).body().shape()).isInstanceOf(Shape.Extrusion.class);
  }

  /** Values of a type that no schema has are read by what is in them; an unknown word is none. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void unknownTypesOfValuesAndUnknownWordsSpoilNothing(String schema) throws IOException {
    String set =
        """
        #60=IFCPROPERTYSINGLEVALUE('FireRating',$,MYLABEL('2 h'),$);
        #61=IFCPROPERTYSET('0000000000000000000061',$,'Pset',$,(#60));
        #62=IFCRELDEFINESBYPROPERTIES('0000000000000000000062',$,$,$,(#100),#61);
        #63=IFCSLAB('0000000000000000000063',$,'S',$,$,#16,#91,$,.NOSUCHWORD.);
        """;
    Building b = read(schema, member(schema, BAR, set));

    assertThat(b.members().get(0).properties().text("FireRating")).contains("2 h");
    assertThat(b.slabs()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aMissingPlacementIsSaidOfItsElement(String schema) throws IOException {
    Building b = read(schema, member(schema, BAR, "").replace("#16,#91", "#999,#91"));

    assertThat(said(b, ModelFinding.BROKEN_PLACEMENT))
        .containsExactly("#999: there is no such placement.");
    assertThat(b.members().get(0).body().shape()).isInstanceOf(Shape.Unsupported.class);
  }
}
