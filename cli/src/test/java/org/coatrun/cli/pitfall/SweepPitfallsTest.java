package org.coatrun.cli.pitfall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Measurement;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sweeps: faults 20 to 22 of the list in {@link PitfallListTest}. */
class SweepPitfallsTest {

  private static final double EXACT = 1e-9;

  @TempDir Path folder;

  /** Fault 20: Guldin's rule about an axis 5 m aside, in the solid's own frame. */
  @ParameterizedTest
  @CsvSource({
    "IFC2X3, 90",
    "IFC4, 90",
    "IFC4X3, 90",
    "IFC4, 5",
    "IFC4, 60",
    "IFC4, 175",
    "IFC4, 270"
  })
  void theAxisOfARevolutionStandsInTheSolidsOwnFrame(String schema, int degrees)
      throws IOException {
    Sketch sketch =
        new Sketch(schema)
            .add(
                """
                #101=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,100.,50.);
                #102=IFCCARTESIANPOINT((7000.,8000.,9000.));
                #103=IFCAXIS2PLACEMENT3D(#102,#12,#11);
                #104=IFCCARTESIANPOINT((5000.,0.,0.));
                #105=IFCDIRECTION((0.,1.,0.));
                #106=IFCAXIS1PLACEMENT(#104,#105);
                """)
            .add("#100=IFCREVOLVEDAREASOLID(#101,#103,#106,%d.);\n".formatted(degrees));
    double way = 5 * Math.toRadians(degrees);
    sketch.steel(200, 100);
    Measurement.Measured m = sketch.only(folder);
    assertThat(m.volume().cubicMetres()).isCloseTo(0.1 * 0.05 * way, withPercentage(1e-6));
    assertThat(m.ledger().exposed().squareMetres())
        .isCloseTo(2 * (0.1 + 0.05) * way, withPercentage(1e-6));
    assertThat(m.ledger().ends().squareMetres()).isCloseTo(2 * 0.1 * 0.05, within(EXACT));
    Building b = sketch.read(folder);
    var revolved = (Shape.Revolution) b.members().get(0).body().shape();
    assertThat(revolved.position().origin()).isEqualTo(new Vec3(7, 8, 9));
    assertThat(revolved.position().z()).isEqualTo(Vec3.X);
  }

  /**
   * Fault 21: a tube of 200 that tapers to 100 mm over a metre, its wall 10 mm at both ends: four
   * trapezia outside and four inside, each leaning by 50 mm in a metre.
   */
  @ParameterizedTest
  @ValueSource(strings = {"IFC4", "IFC4X3"})
  void taperedTubesKeepTheirTaperAndTheirHole(String schema) throws IOException {
    Sketch sketch =
        new Sketch(schema)
            .add(
                """
                #101=IFCRECTANGLEHOLLOWPROFILEDEF(.AREA.,$,$,200.,200.,10.,$,$);
                #102=IFCRECTANGLEHOLLOWPROFILEDEF(.AREA.,$,$,100.,100.,10.,$,$);
                #100=IFCEXTRUDEDAREASOLIDTAPERED(#101,#13,#11,1000.,#102);
                """);
    Measurement.Measured m = sketch.steel(200, 100).only(folder);
    double lean = Math.hypot(1, 0.05);
    assertThat(m.ledger().exposed().squareMetres())
        .isCloseTo(4 * (0.2 + 0.1) / 2 * lean, within(EXACT));
    assertThat(m.ledger().inside().squareMetres())
        .isCloseTo(4 * (0.18 + 0.08) / 2 * lean, within(EXACT));
    assertThat(m.ledger().ends().squareMetres())
        .isCloseTo(0.04 - 0.0324 + 0.01 - 0.0064, within(EXACT));
    double outer = (0.04 + 0.01 + 0.02) / 3;
    double inner = (0.0324 + 0.0064 + 0.0144) / 3;
    assertThat(m.volume().cubicMetres()).isCloseTo(outer - inner, within(EXACT));
  }

  static Stream<Arguments> straightSweeps() {
    String end = ",#13,#105,$,$,#12);\n";
    return Stream.of(
        Arguments.of("IFC2X3", "IFCSURFACECURVESWEPTAREASOLID(#101,#13,#105,0.,1.,#106);\n"),
        Arguments.of("IFC4", "IFCSURFACECURVESWEPTAREASOLID(#101,#13,#105,$,$,#106);\n"),
        Arguments.of("IFC4", "IFCSURFACECURVESWEPTAREASOLID(#101,$,#105,0.,1.,#106);\n"),
        Arguments.of("IFC4", "IFCFIXEDREFERENCESWEPTAREASOLID(#101" + end.replace("#12", "#11")),
        Arguments.of("IFC4X3", "IFCSURFACECURVESWEPTAREASOLID(#101,#13,#105,$,$,#106);\n"),
        Arguments.of("IFC4X3", "IFCFIXEDREFERENCESWEPTAREASOLID(#101" + end.replace("#12", "#11")),
        Arguments.of(
            "IFC4X3",
            "IFCDIRECTRIXDERIVEDREFERENCESWEPTAREASOLID(#101" + end.replace("#12", "#11")));
  }

  /** Fault 22: a straight bar of 2 m is a straight bar of 2 m, whatever sweep it is written as. */
  @ParameterizedTest
  @MethodSource("straightSweeps")
  void straightBarsWrittenAsOtherSweepsAreMeasured(String schema, String sweep) throws IOException {
    Sketch sketch =
        new Sketch(schema)
            .add(
                """
                #101=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,100.,50.);
                #104=IFCCARTESIANPOINT((2000.,0.,0.));
                #105=IFCPOLYLINE((#10,#104));
                #106=IFCPLANE(#13);
                #100=
                """
                    .strip())
            .add(sweep);
    Measurement.Measured m = sketch.steel(200, 100).only(folder);
    assertThat(m.length().metres()).isCloseTo(2, within(EXACT));
    assertThat(m.ledger().exposed().squareMetres()).isCloseTo(2 * (0.1 + 0.05) * 2, within(EXACT));
    assertThat(m.ledger().ends().squareMetres()).isCloseTo(2 * 0.1 * 0.05, within(EXACT));
    assertThat(m.volume().cubicMetres()).isCloseTo(0.1 * 0.05 * 2, within(EXACT));
  }
}
