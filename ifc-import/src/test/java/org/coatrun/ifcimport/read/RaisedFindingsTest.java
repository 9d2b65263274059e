package org.coatrun.ifcimport.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.ModelFinding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A sound model has no findings; each thing amiss in it is one finding of its own kind. */
class RaisedFindingsTest {

  private static final String CONTAINED =
      "#21=IFCRELCONTAINEDINSPATIALSTRUCTURE('0000000000000000000021',$,$,$,(#100),#18);\n";
  private static final String STOREY =
      """
      #17=IFCBUILDING('0000000000000000000017',$,'B',$,$,#16,$,$,.ELEMENT.,$,$,$);
      #18=IFCBUILDINGSTOREY('0000000000000000000018',$,'Level 1',$,$,#16,$,$,.ELEMENT.,0.);
      #19=IFCRELAGGREGATES('0000000000000000000019',$,$,$,#1,(#17));
      #20=IFCRELAGGREGATES('0000000000000000000020',$,$,$,#17,(#18));
      """;
  private static final String STEEL =
      """
      #110=IFCMATERIAL('Steel S355',$,$);
      #111=IFCRELASSOCIATESMATERIAL('0000000000000000000111',$,$,$,(#100),#110);
      """;
  private static final String MEMBER =
      Snippet.member(
          "IFC4",
          """
          #40=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#15,100.,50.);
          #50=IFCEXTRUDEDAREASOLID(#40,#13,#11,1000.);
          """);
  private static final String SOUND = STOREY + CONTAINED + MEMBER + STEEL;

  @TempDir private Path folder;

  /** A model with one thing amiss, and what is said of it. */
  record Amiss(ModelFinding code, String schema, String records, String sentence) {

    static Amiss of(ModelFinding code, String records, String sentence) {
      return new Amiss(code, "IFC4", records, sentence);
    }

    static Amiss without(String part, ModelFinding code, String sentence) {
      return of(code, SOUND.replace(part, ""), sentence);
    }

    static Amiss with(String more, ModelFinding code, String sentence) {
      return of(code, SOUND + more, sentence);
    }

    static Amiss instead(String part, String other, ModelFinding code, String sentence) {
      return of(code, SOUND.replace(part, other), sentence);
    }

    @Override
    public String toString() {
      return code.code() + ": " + sentence;
    }
  }

  static Stream<Amiss> amiss() {
    return Stream.of(
        Amiss.with(
            "#2=IFCSIUNIT(*,.AREAUNIT.,$,.SQUARE_METRE.);\n",
            ModelFinding.NO_LENGTH_UNIT,
            "metres were assumed"),
        Amiss.with(
            "#2=IFCCONVERSIONBASEDUNIT(#7,.LENGTHUNIT.,'CUBIT',$);\n",
            ModelFinding.UNKNOWN_UNIT,
            "ConversionFactor is missing"),
        Amiss.instead(
            "IFCMATERIAL('Steel S355',$,$)",
            "IFCMATERIALLIST((#110))",
            ModelFinding.BROKEN_RECORD,
            "made of itself"),
        Amiss.instead(
            "(#100),#18", "(#100),$", ModelFinding.BROKEN_RECORD, "RelatingStructure is missing"),
        Amiss.with(
            "#200=IFCSTEELTHING('a',1.);\n", ModelFinding.UNKNOWN_ENTITY, "1 × IFCSTEELTHING"),
        new Amiss(
            ModelFinding.OTHER_SCHEMA_ENTITY,
            "IFC2X3",
            SOUND + "#200=IFCBEAMSTANDARDCASE('0000000000000000000200',$,'B',$,$,$,$,$);\n",
            "IFCBEAMSTANDARDCASE does not belong to IFC2X3"),
        new Amiss(
            ModelFinding.LINEAR_PLACEMENT,
            "IFC4X3",
            SOUND + "#200=IFCLINEARPLACEMENT($,#13,$);\n",
            "#200 places something along an alignment"),
        Amiss.without(CONTAINED, ModelFinding.NO_STOREY, "'M' is in no storey"),
        Amiss.instead(
            "$,$,#16,$,$,.ELEMENT.,0.)",
            "$,$,#22,$,$,.ELEMENT.,3000.);\n#22=IFCLOCALPLACEMENT(#16,#23);\n"
                + "#23=IFCAXIS2PLACEMENT3D(#24,$,$);\n#24=IFCCARTESIANPOINT((0.,0.,5000.))",
            ModelFinding.STOREY_HEIGHT,
            "'Level 1' is placed at 5.000 m and says 3.000 m"),
        new Amiss(ModelFinding.NEAREST_SCHEMA, "IFC4X1", SOUND, "IFC4X1 was read as IFC4"),
        Amiss.of(ModelFinding.NO_STOREYS, MEMBER + STEEL, "no storeys"),
        Amiss.instead(
            "#16,#91",
            "#30,#91,'T1',$);\n#30=IFCLOCALPLACEMENT(#16,#31);\n#31=IFCAXIS2PLACEMENT3D(#32,$,$);\n"
                + "#32=IFCCARTESIANPOINT((5.E8,4.E9,0.));\n#33=IFCDIRECTION((1.,0.,0.",
            ModelFinding.FAR_FROM_ORIGIN,
            "x = 500000.0 m, y = 4000000.0 m"),
        Amiss.instead(
            "#110=IFCMATERIAL('Steel S355',$,$)",
            "#110=IFCMATERIALLIST((#112,#113));\n#112=IFCMATERIAL('Steel S355',$,$);\n"
                + "#113=IFCMATERIAL('Concrete C30',$,$)",
            ModelFinding.CONTRADICTORY_MATERIAL,
            "of steel and of something else"),
        Amiss.with(
            "#200=IFCOPENINGELEMENT('0000000000000000000200',$,'O',$,$,#16,$,$,.OPENING.);\n",
            ModelFinding.OPENING_WITHOUT_HOST,
            "'O' cuts nothing"),
        Amiss.of(ModelFinding.TYPES_ONLY, STOREY, "no building elements"));
  }

  private List<Finding> findings(String schema, String records) throws IOException {
    return new Snippet(schema, records).read(folder).findings();
  }

  @Test
  void aSoundModelHasNone() throws IOException {
    for (String schema : new String[] {"IFC4", "IFC4X3"}) {
      assertThat(findings(schema, SOUND)).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("amiss")
  void whatIsAmissIsSaidOnce(Amiss model) throws IOException {
    assertThat(findings(model.schema(), model.records()))
        .filteredOn(f -> f.code() == model.code())
        .singleElement()
        .satisfies(f -> assertThat(f.sentence()).contains(model.sentence()));
  }
}
