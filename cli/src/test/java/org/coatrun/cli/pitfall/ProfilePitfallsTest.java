package org.coatrun.cli.pitfall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.coatrun.geometry.profile.OutlineResult;
import org.coatrun.geometry.profile.Outlines;
import org.coatrun.geometry.profile.Rectangle2;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.surface.Measurement;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Profiles: faults 10, 12 and 15 to 18 of the list in {@link PitfallListTest}. */
class ProfilePitfallsTest {

  private static final double EXACT = 1e-7;

  @TempDir Path folder;

  /**
   * Fault 10. The thickness of a sloped flange is taken at the middle of its overhang (convention
   * of this program; the standard leaves it open), so the area is that of parallel flanges; the
   * contour is shorter by 2 tan(a) and longer by 2 (1/cos(a) - 1) of each pair of overhangs.
   */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aSlopedFlangeKeepsItsAreaAndChangesItsContour(String schema) throws IOException {
    double slope = Math.toRadians(9.4623);
    String channel =
        "#110=IFCUSHAPEPROFILEDEF(.AREA.,'U',#15,200.,75.,8.5,11.5,0.,0.,9.4623%s);\n"
            .formatted(schema.equals("IFC2X3") ? ",$" : "");
    double over = 0.075 - 0.0085;
    double contour =
        2 * 0.2
            + 4 * 0.075
            - 2 * 0.0085
            - 2 * over * Math.tan(slope)
            + 2 * over * (1 / Math.cos(slope) - 1);
    double steel = 0.2 * 0.0085 + 2 * 0.0115 * over;
    requireSection(Sketch.metre(schema, channel, folder), contour, steel);

    if (!schema.equals("IFC2X3")) {
      String beam = "#110=IFCISHAPEPROFILEDEF(.AREA.,'S',#15,100.,200.,8.,11.,0.,0.,9.4623);\n";
      double half = (0.1 - 0.008) / 2;
      double round =
          2 * 0.2
              + 4 * 0.1
              - 2 * 0.008
              - 4 * half * Math.tan(slope)
              + 4 * half * (1 / Math.cos(slope) - 1);
      requireSection(
          Sketch.metre(schema, beam, folder), round, 0.2 * 0.008 + 2 * 0.011 * (0.1 - 0.016 / 2));
    }
  }

  private static void requireSection(Measurement.Measured m, double contour, double steel) {
    assertThat(m.section().orElseThrow().outline().metres()).isCloseTo(contour, within(EXACT));
    assertThat(m.section().orElseThrow().steel().squareMetres()).isCloseTo(steel, within(EXACT));
    assertThat(m.ledger().exposed().squareMetres()).isCloseTo(contour, within(EXACT));
    assertThat(m.volume().cubicMetres()).isCloseTo(steel, within(EXACT));
  }

  static Stream<Arguments> cornerShapes() {
    return Stream.of("IFC2X3", "IFC4", "IFC4X3")
        .flatMap(
            s ->
                Stream.of(
                    Arguments.of(s, "IFCUSHAPEPROFILEDEF(.AREA.,'U',%s,75.,100.,8.,11.,$,$,$", 1),
                    Arguments.of(s, "IFCLSHAPEPROFILEDEF(.AREA.,'L',%s,75.,100.,8.,$,$,$", 2),
                    Arguments.of(
                        s, "IFCTSHAPEPROFILEDEF(.AREA.,'T',%s,75.,100.,8.,11.,$,$,$,$,$", 1)));
  }

  /** Fault 12: ISO 16739 centres each on its bounding box, and Position moves it from there. */
  @ParameterizedTest
  @MethodSource("cornerShapes")
  void shapesOfOneCornerStandAboutTheirMiddle(String schema, String record, int centroids)
      throws IOException {
    String more = schema.equals("IFC2X3") ? ",$".repeat(centroids) + ");\n" : ");\n";
    String at = "#101=IFCCARTESIANPOINT((300.,-40.));\n#102=IFCAXIS2PLACEMENT2D(#101,$);\n";
    Rectangle2 middle = bounds(schema, "#110=" + record.formatted("#15") + more);
    Rectangle2 moved = bounds(schema, at + "#110=" + record.formatted("#102") + more);
    assertThat(middle.minX()).isCloseTo(-0.05, within(EXACT));
    assertThat(middle.maxX()).isCloseTo(0.05, within(EXACT));
    assertThat(middle.minY()).isCloseTo(-0.0375, within(EXACT));
    assertThat(middle.maxY()).isCloseTo(0.0375, within(EXACT));
    assertThat(moved.minX()).isCloseTo(0.25, within(EXACT));
    assertThat(moved.maxY()).isCloseTo(-0.0025, within(EXACT));
  }

  private Rectangle2 bounds(String schema, String profile) throws IOException {
    Building b = new Sketch(schema).add(profile).swept(100, 110, 1000).steel(200, 100).read(folder);
    var swept = (Shape.Extrusion) b.members().get(0).body().shape();
    return ((OutlineResult.Drawn) Outlines.of(swept.profile())).outline().bounds();
  }

  /** Fault 15: two profiles in the material and none that joins them; the body is one of them. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC4", "IFC4X3"})
  void ofSeveralProfilesInTheMaterialTheBodyDecides(String schema) throws IOException {
    Measurement.Measured m = withProfileSet(schema, "").only(folder);
    requireSection(m, 2 * (0.1 + 0.05), 0.1 * 0.05);
  }

  /** Fault 16: the body already stands where the cardinal point puts it. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC4", "IFC4X3"})
  void theCardinalPointIsNotAppliedToTheBodyAgain(String schema) throws IOException {
    Building without = withProfileSet(schema, "").read(folder);
    for (int point : new int[] {1, 5, 8, 9}) {
      Building with = withProfileSet(schema, "," + point + ",$").read(folder);
      assertThat(with.members().get(0).body().shape())
          .isEqualTo(without.members().get(0).body().shape());
      assertThat(with.members().get(0).body().placement())
          .isEqualTo(without.members().get(0).body().placement());
    }
  }

  private static Sketch withProfileSet(String schema, String usage) {
    String material = usage.isEmpty() ? "#124" : "#125";
    return new Sketch(schema)
        .bar(100, 1000)
        .member(200, 100)
        .add(
            """
            #120=IFCMATERIAL('Steel S355',$,$);
            #121=IFCRECTANGLEPROFILEDEF(.AREA.,'A',$,400.,300.);
            #122=IFCMATERIALPROFILE('a',$,#120,#121,$,$);
            #123=IFCMATERIALPROFILE('b',$,#120,#101,$,$);
            #124=IFCMATERIALPROFILESET('two',$,(#122,#123),$);
            """)
        .add(usage.isEmpty() ? "" : "#125=IFCMATERIALPROFILESETUSAGE(#124" + usage + ");\n")
        .add(
            "#126=IFCRELASSOCIATESMATERIAL('0000000000000000000126',$,$,$,(#200),"
                + material
                + ");\n");
  }

  /** Fault 17: half the thickness to either side, the corner mitred. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aCentreLineIsAsThickToEitherSide(String schema) throws IOException {
    String bent =
        """
        #101=IFCCARTESIANPOINT((100.,0.));
        #102=IFCCARTESIANPOINT((100.,80.));
        #103=IFCPOLYLINE((#14,#101,#102));
        #110=IFCCENTERLINEPROFILEDEF(.CURVE.,'bent plate',#103,6.);
        """;
    requireSection(
        Sketch.metre(schema, bent, folder), 2 * (0.1 + 0.08) + 2 * 0.006, (0.1 + 0.08) * 0.006);
  }

  /** Fault 18: a lipped channel 200 by 75 by 20, 2 mm, drawn by its corners. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aColdFormedSectionHasTheLengthOfItsOutline(String schema) throws IOException {
    double[][] corners = {
      {0, 0}, {75, 0}, {75, 20}, {73, 20}, {73, 2}, {2, 2}, {2, 198}, {73, 198}, {73, 180},
      {75, 180}, {75, 200}, {0, 200}
    };
    StringBuilder outline = new StringBuilder();
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < corners.length; i++) {
      outline.append(
          "#%d=IFCCARTESIANPOINT((%s,%s));\n".formatted(120 + i, corners[i][0], corners[i][1]));
      points.append("#").append(120 + i).append(',');
    }
    outline.append("#140=IFCPOLYLINE((" + points + "#120));\n");
    outline.append("#110=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,'C200x75x20x2',#140);\n");
    double middle = (200 - 2) + 2 * (75 - 2) + 2 * (20 - 1);
    requireSection(
        Sketch.metre(schema, outline.toString(), folder),
        (2 * middle + 2 * 2) / 1000,
        middle * 2 / 1e6);
  }

  /** Fault 18 with arcs: two straight sides of 100 and two half circles of 50 across. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC4", "IFC4X3"})
  void arcsOfAnOutlineCountByTheirLength(String schema) throws IOException {
    String outline =
        """
        #120=IFCCARTESIANPOINTLIST2D(((0.,0.),(100.,0.),(125.,25.),(100.,50.),(0.,50.),(-25.,25.))%s);
        #140=IFCINDEXEDPOLYCURVE(#120,(IFCLINEINDEX((1,2)),IFCARCINDEX((2,3,4)),IFCLINEINDEX((4,5)),IFCARCINDEX((5,6,1))),.F.);
        #110=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,'slot',#140);
        """
            .formatted(schema.equals("IFC4") ? "" : ",$");
    Measurement.Measured m = Sketch.metre(schema, outline, folder);
    assertThat(m.section().orElseThrow().outline().metres())
        .isCloseTo(0.2 + Math.PI * 0.05, withPercentage(1e-6));
    assertThat(m.ledger().exposed().squareMetres())
        .isCloseTo(0.2 + Math.PI * 0.05, withPercentage(1e-6));
    assertThat(m.section().orElseThrow().steel().squareMetres())
        .isCloseTo(0.1 * 0.05 + Math.PI * 0.025 * 0.025, withPercentage(1e-6));
  }
}
