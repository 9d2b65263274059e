package org.coatrun.ifcimport.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.coatrun.ifcimport.part21.ModelFileException;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform2;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Faults that readers of steel models are known for, once for each schema. */
class PitfallsTest {

  @TempDir Path folder;

  private Member member(String schema, String item) throws IOException {
    return new Snippet(schema, Snippet.member(schema, item)).read(folder).members().get(0);
  }

  private Profile profile(String schema, String profile) throws IOException {
    Member m = member(schema, profile + "#50=IFCEXTRUDEDAREASOLID(#40,#13,#11,1000.);\n");
    return ((Shape.Extrusion) m.body().shape()).profile();
  }

  /** ISO 16739: a radius left out is unknown, zero is a sharp corner. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void keepsUnknownAndSharpFilletsApart(String schema) throws IOException {
    String more = schema.equals("IFC2X3") ? "" : ",$,$";
    var unknown =
        (Profile.IShape)
            profile(
                schema,
                "#40=IFCISHAPEPROFILEDEF(.AREA.,'IPE200',#15,100.,200.,5.6,8.5,$" + more + ");\n");
    var sharp =
        (Profile.IShape)
            profile(
                schema,
                "#40=IFCISHAPEPROFILEDEF(.AREA.,'IPE200',#15,100.,200.,5.6,8.5,0." + more + ");\n");
    assertThat(unknown.fillet()).isEmpty();
    assertThat(sharp.fillet()).hasValue(0);
    assertThat(unknown.depth()).isCloseTo(0.2, within(1e-12));
  }

  /** ISO 16739: IFC2X3 inherits from the I-shape, IFC4 names both flanges. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void doesNotSwapTheFlangesOfAnAsymmetricI(String schema) throws IOException {
    String record =
        schema.equals("IFC2X3")
            ? "#40=IFCASYMMETRICISHAPEPROFILEDEF(.AREA.,$,#15,300.,500.,10.,20.,5.,200.,15.,6.,$);\n"
            : "#40=IFCASYMMETRICISHAPEPROFILEDEF(.AREA.,$,#15,300.,500.,10.,20.,5.,200.,15.,6.,$,$,$,$);\n";
    var i = (Profile.AsymmetricI) profile(schema, record);
    assertThat(i.bottom().width()).isCloseTo(0.3, within(1e-12));
    assertThat(i.bottom().thickness()).isCloseTo(0.02, within(1e-12));
    assertThat(i.top().width()).isCloseTo(0.2, within(1e-12));
    assertThat(i.top().fillet().orElseThrow()).isCloseTo(0.006, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC4", "IFC4X3"})
  void mirrorsAboutTheUprightAxisWhateverTheOperator(String schema) throws IOException {
    for (String operator : new String[] {"*", "$"}) {
      var mirrored =
          (Profile.Placed)
              profile(
                  schema,
                  "#39=IFCLSHAPEPROFILEDEF(.AREA.,'L',#15,100.,75.,8.,$,$,$);\n"
                      + "#40=IFCMIRROREDPROFILEDEF(.AREA.,'L',#39,"
                      + operator
                      + ",$);\n");
      assertThat(mirrored.by()).isEqualTo(Transform2.MIRROR_Y);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void keepsScaleAndReflectionOfADerivedProfile(String schema) throws IOException {
    var derived =
        (Profile.Placed)
            profile(
                schema,
                """
                #37=IFCDIRECTION((-1.,0.));
                #38=IFCCARTESIANTRANSFORMATIONOPERATOR2DNONUNIFORM(#37,$,#14,2.,3.);
                #39=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#15,100.,50.);
                #40=IFCDERIVEDPROFILEDEF(.AREA.,'D',#39,#38,$);
                """);
    assertThat(derived.by().determinant()).isCloseTo(6, within(1e-12));
    assertThat(derived.by().x().x()).isCloseTo(-2, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void readsRevolvedAnglesInTheUnitOfTheFile(String schema) throws IOException {
    Member m =
        member(
            schema,
            """
            #40=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#15,100.,50.);
            #41=IFCCARTESIANPOINT((5000.,0.,0.));
            #42=IFCDIRECTION((0.,1.,0.));
            #43=IFCAXIS1PLACEMENT(#41,#42);
            #50=IFCREVOLVEDAREASOLID(#40,#13,#43,90.);
            """);
    var revolution = (Shape.Revolution) m.body().shape();
    assertThat(revolution.angle()).isCloseTo(Math.PI / 2, within(1e-12));
    assertThat(revolution.axisPoint()).isEqualTo(new Vec3(5, 0, 0));
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void letsTheAgreementFlagDecideTheSide(String schema) throws IOException {
    for (boolean agrees : new boolean[] {true, false}) {
      Member m =
          member(
              schema,
              """
              #40=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#15,100.,50.);
              #41=IFCEXTRUDEDAREASOLID(#40,#13,#11,1000.);
              #42=IFCPLANE(#13);
              """
                  + "#43=IFCHALFSPACESOLID(#42,"
                  + (agrees ? ".T." : ".F.")
                  + ");\n"
                  + "#50=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#41,#43);\n");
      var cut = (Shape.Combination) m.body().shape();
      var half = (Shape.HalfSpace) cut.second();
      // With the flag true the normal points away from the material (ISO 16739).
      assertThat(half.outward().z()).isEqualTo(agrees ? 1 : -1);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void letsMissingScalesFollowTheFirst(String schema) throws IOException {
    Member m =
        member(
            schema,
            """
            #40=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#15,100.,50.);
            #41=IFCEXTRUDEDAREASOLID(#40,#13,#11,1000.);
            #42=IFCSHAPEREPRESENTATION(#9,'Body','SweptSolid',(#41));
            #43=IFCCARTESIANPOINT((10.,0.,0.));
            #44=IFCAXIS2PLACEMENT3D(#43,$,$);
            #45=IFCREPRESENTATIONMAP(#44,#42);
            #46=IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM($,$,#10,2.,$,$,5.);
            #50=IFCMAPPEDITEM(#45,#46);
            """);
    var placed = (Shape.Placed) m.body().shape();
    assertThat(placed.by().determinant()).isCloseTo(2 * 2 * 5, within(1e-12));
    assertThat(placed.by().origin().x()).isCloseTo(0.02, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void readsInchFilesByTheirUnit(String schema) throws IOException {
    Member m =
        member(
            schema,
            """
            #20=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
            #21=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(0.0254),#20);
            #2=IFCCONVERSIONBASEDUNIT(#7,.LENGTHUNIT.,'INCH',#21);
            #40=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#15,10.,5.);
            #50=IFCEXTRUDEDAREASOLID(#40,#13,#11,100.);
            """);
    assertThat(((Shape.Extrusion) m.body().shape()).depth()).isCloseTo(2.54, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void takesAFarOriginOffThePlacements(String schema) throws IOException {
    String far =
        """
        #17=IFCCARTESIANPOINT((5000000000.,100.,0.));
        #18=IFCAXIS2PLACEMENT3D(#17,$,$);
        #19=IFCLOCALPLACEMENT($,#18);
        #40=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#15,100.,50.);
        #50=IFCEXTRUDEDAREASOLID(#40,#13,#11,1000.);
        """;
    Building b =
        new Snippet(schema, Snippet.member(schema, far).replace("#16,#91", "#19,#91")).read(folder);
    assertThat(b.origin()).isEqualTo(new Vec3(5_000_000, 0, 0));
    assertThat(b.members().get(0).body().placement().origin().x()).isZero();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Stahlbeton C30/37", "gewapend beton", "Béton armé", "Reinforced Concrete"})
  void takesConcreteForConcrete(String material) throws IOException {
    assertThat(substance(material)).isEqualTo(Substance.CONCRETE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Rebar B500B", "Betonstahl", "wapeningsstaal", "acier à béton"})
  void takesReinforcementForReinforcement(String material) throws IOException {
    assertThat(substance(material)).isEqualTo(Substance.REINFORCEMENT);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "S355JR",
        "Steel ASTM A992",
        "Baustahl",
        "acier",
        "Acero estructural",
        "A572 Gr. 50",
        "Steel, concrete filled"
      })
  void takesSteelForSteel(String material) throws IOException {
    assertThat(substance(material)).isEqualTo(Substance.STEEL);
  }

  private Substance substance(String material) throws IOException {
    String records =
        Snippet.member("IFC2X3", "")
            + "#60=IFCMATERIAL('"
            + material
            + "');\n#61=IFCRELASSOCIATESMATERIAL('0000000000000000000061',$,$,$,(#100),#60);\n";
    return new Snippet("IFC2X3", records)
        .read(folder)
        .members()
        .get(0)
        .classification()
        .substance();
  }

  @Test
  void aBrokenBodyStaysWithItsElement() throws IOException {
    Member m = member("IFC4", "#50=IFCEXTRUDEDAREASOLID(#4711,#13,#11,1000.);\n");
    assertThat(m.body().shape()).isInstanceOf(Shape.Unsupported.class);
  }

  @Test
  void aPlacementThatRefersToItselfStaysWithItsElement() throws IOException {
    String loop =
        """
        #19=IFCLOCALPLACEMENT(#20,#13);
        #20=IFCLOCALPLACEMENT(#19,#13);
        #40=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#15,100.,50.);
        #50=IFCEXTRUDEDAREASOLID(#40,#13,#11,1000.);
        """;
    Building b =
        new Snippet("IFC4", Snippet.member("IFC4", loop).replace("#16,#91", "#19,#91"))
            .read(folder);
    assertThat(b.members().get(0).body().shape()).isInstanceOf(Shape.Unsupported.class);
  }

  @Test
  void theSameElementInTwoFilesCountsOnce() throws IOException {
    Path one = new Snippet("IFC4", Snippet.member("IFC4", "")).write(folder);
    Path two = new Snippet("IFC2X3", Snippet.member("IFC2X3", "")).write(folder);
    Building b =
        IfcImport.read(List.of(one, two), ImportOptions.DEFAULT, ProgressListener.silent());
    assertThat(b.members()).hasSize(1);
    assertThat(b.findings()).anyMatch(f -> f.code() == ModelFinding.SAME_ELEMENT_IN_FILES);
  }

  /** The names that files bear; each is read by the nearest of three tables. */
  @ParameterizedTest
  @CsvSource({
    "IFC2X_FINAL, IFC2X3",
    "IFC2X2_FINAL, IFC2X3",
    "IFC2X3, IFC2X3",
    "ifc2x3, IFC2X3",
    "IFC2X3_TC1, IFC2X3",
    "IFC2X3_FINAL, IFC2X3",
    "IFC4, IFC4",
    "ifc4, IFC4",
    "IFC4_ADD1, IFC4",
    "IFC4_ADD2, IFC4",
    "IFC4_ADD2_TC1, IFC4",
    "IFC4X1, IFC4",
    "IFC4X2, IFC4X3",
    "IFC4X3, IFC4X3",
    "IFC4X3_RC1, IFC4X3",
    "IFC4X3_RC2, IFC4X3",
    "IFC4X3_RC3, IFC4X3",
    "IFC4X3_RC4, IFC4X3",
    "IFC4X3_TC1, IFC4X3",
    "IFC4X3_ADD1, IFC4X3",
    "IFC4X3_ADD2, IFC4X3"
  })
  void readsEachSchemaByTheNearestTable(String name, String table) throws IOException {
    String item = Snippet.member(table, "#50=IFCBLOCK(#13,1.,1.,1.);\n");
    Building b = new Snippet(name, item).read(folder);

    assertThat(b.members()).hasSize(1);
    assertThat(b.files().get(0).schema()).isEqualToIgnoringCase(name);
    assertThat(b.files().get(0).schemaUsed()).isEqualTo(table);
  }

  @Test
  void anUnknownSchemaIsOneClearSentence() {
    assertThatThrownBy(() -> new Snippet("AP203", "").read(folder))
        .isInstanceOf(ModelFileException.class)
        .hasMessageContaining("AP203");
  }
}
