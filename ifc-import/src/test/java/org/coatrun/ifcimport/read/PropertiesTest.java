package org.coatrun.ifcimport.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.coatrun.shared.model.Properties;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Property and quantity sets, once for each schema (ISO 16739, property and quantity resources).
 */
class PropertiesTest {

  @TempDir Path folder;

  private static final String SETS =
      """
      #400=IFCPROPERTYSINGLEVALUE('FireRating',$,IFCLABEL('2 h'),$);
      #401=IFCPROPERTYSINGLEVALUE('LoadBearing',$,IFCBOOLEAN(.T.),$);
      #402=IFCPROPERTYSINGLEVALUE('Pieces',$,IFCINTEGER(3),$);
      #403=IFCPROPERTYSINGLEVALUE('Slope',$,IFCREAL(1.5),$);
      #404=IFCPROPERTYENUMERATEDVALUE('Status',$,(IFCLABEL('NEW'),IFCLABEL('DEMOLISH')),$);
      #405=IFCPROPERTYLISTVALUE('Marks',$,(IFCLABEL('a'),IFCLABEL('b')),$);
      #406=IFCPROPERTYSINGLEVALUE('Inner',$,IFCLABEL('deep'),$);
      #407=IFCCOMPLEXPROPERTY('Box',$,'use',(#406));
      #408=IFCPROPERTYSINGLEVALUE('Empty',$,$,$);
      #410=IFCPROPERTYSET('0000000000000000000410',$,'Pset',$,(#400,#401,#402,#403,#404,#405,#407,#408));
      #411=IFCRELDEFINESBYPROPERTIES('0000000000000000000411',$,$,$,(#100),#410);
      """;

  private Properties of(String schema, String records) throws IOException {
    return new Snippet(schema, Snippet.member(schema, "#50=IFCBLOCK(#13,1.,1.,1.);\n") + records)
        .read(folder)
        .members()
        .get(0)
        .properties();
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void propertiesOfEachKindReadAsText(String schema) throws IOException {
    Properties p = of(schema, SETS);
    assertThat(p.text("FireRating")).hasValue("2 h");
    assertThat(p.text("firerating")).hasValue("2 h");
    assertThat(p.text("LoadBearing")).hasValueSatisfying(v -> assertThat(v).isNotBlank());
    assertThat(p.text("Pieces")).hasValue("3");
    assertThat(p.text("Slope")).hasValue("1.5");
    assertThat(p.text("Status")).hasValue("NEW, DEMOLISH");
    assertThat(p.text("Marks")).hasValue("a, b");
    assertThat(p.text("Inner")).hasValue("deep");
    assertThat(p.text("Empty")).isEmpty();
    assertThat(p.text("Absent")).isEmpty();
    assertThat(p.texts(List.of("firerating", "Inner", "Empty", "Status", "Absent")))
        .containsOnly(
            Map.entry("firerating", "2 h"),
            Map.entry("Inner", "deep"),
            Map.entry("Status", "NEW, DEMOLISH"));
  }

  /** An element's own value stands before its type's; what only the type has counts too. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void anElementsOwnValueStandsBeforeItsTypes(String schema) throws IOException {
    String type =
        """
        #420=IFCPROPERTYSINGLEVALUE('FireRating',$,IFCLABEL('1 h'),$);
        #421=IFCPROPERTYSINGLEVALUE('Finish',$,IFCLABEL('primed'),$);
        #422=IFCPROPERTYSET('0000000000000000000422',$,'Pset',$,(#420,#421));
        #423=IFCMEMBERTYPE('0000000000000000000423',$,'T',$,$,(#422),$,$,$,.MEMBER.);
        #424=IFCRELDEFINESBYTYPE('0000000000000000000424',$,$,$,(#100),#423);
        """;
    Properties p = of(schema, SETS + type);
    assertThat(p.text("FireRating")).hasValue("2 h");
    assertThat(p.text("Finish")).hasValue("primed");
  }

  /**
   * The file gives no unit of area, so it follows from the millimetre; a quantity's own unit wins,
   * and one whose unit is broken says nothing.
   */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void quantitiesAreInSiWhateverTheUnitsOfTheFile(String schema) throws IOException {
    String end = schema.equals("IFC2X3") ? ");\n" : ",$);\n";
    String records =
        "#430=IFCQUANTITYLENGTH('Length',$,$,2500."
            + end
            + "#431=IFCQUANTITYAREA('OuterSurfaceArea',$,$,3.5"
            + end
            + "#432=IFCQUANTITYVOLUME('NetVolume',$,#442,0.25"
            + end
            + "#433=IFCQUANTITYLENGTH('Width',$,#440,10."
            + end
            + "#434=IFCQUANTITYLENGTH('Depth',$,$,7."
            + end
            + "#435=IFCPHYSICALCOMPLEXQUANTITY('layer',$,(#434),'layer',$,$);\n"
            + "#436=IFCQUANTITYLENGTH('Odd',$,#4711,7."
            + end
            + """
            #437=IFCELEMENTQUANTITY('0000000000000000000437',$,'Qto',$,$,(#430,#431,#432,#433,#435,#436));
            #438=IFCRELDEFINESBYPROPERTIES('0000000000000000000438',$,$,$,(#100),#437);
            #439=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
            #440=IFCCONVERSIONBASEDUNIT(#7,.LENGTHUNIT.,'INCH',#441);
            #441=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(0.0254),#439);
            #442=IFCSIUNIT(*,.VOLUMEUNIT.,$,.CUBIC_METRE.);
            """;
    Properties p = of(schema, records);
    assertThat(p.quantity("Length")).hasValue(2.5);
    assertThat(p.quantity("OuterSurfaceArea").orElseThrow()).isCloseTo(3.5e-6, within(1e-18));
    assertThat(p.quantity("NetVolume").orElseThrow()).isCloseTo(0.25, within(1e-12));
    assertThat(p.quantity("Width").orElseThrow()).isCloseTo(0.254, within(1e-12));
    assertThat(p.quantity("Depth").orElseThrow()).isCloseTo(0.007, within(1e-12));
    assertThat(p.quantity("Odd")).isEmpty();
    assertThat(p.quantity("Absent")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aBrokenSetSilencesNoOther(String schema) throws IOException {
    String broken =
        """
        #450=IFCPROPERTYSET('0000000000000000000450',$,'broken',$,(#4711));
        #451=IFCRELDEFINESBYPROPERTIES('0000000000000000000451',$,$,$,(#100),#450);
        #452=IFCRELDEFINESBYPROPERTIES('0000000000000000000452',$,$,$,(#100),#4712);
        """;
    assertThat(of(schema, broken + SETS).text("FireRating")).hasValue("2 h");
  }
}
