package org.coatrun.cli.pitfall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.shared.estimate.Status;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.surface.Measurement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Profiles that have no printed table, from their text to their closed formula. */
class ProfileKindsTest {

  /** What a corner of 90 degrees saves of the contour, by its radius; and of the area, by r². */
  private static final double SAVED = 2 - Math.PI / 2;

  private static final double CUT = 1 - Math.PI / 4;

  @TempDir Path folder;

  /** In m and m²; {@code inner} is the contour of what is hollow. */
  record Kind(String record, double outer, double inner, double area) {
    @Override
    public String toString() {
      return record.substring(0, record.indexOf('('));
    }
  }

  static Stream<Kind> kinds() {
    double lip = (0.2 - 0.002) + 2 * (0.075 - 0.002) + 2 * (0.02 - 0.001) - 4 * SAVED * 0.004;
    return Stream.of(
        new Kind(
            "TRAPEZIUMPROFILEDEF(.AREA.,$,#15,200.,100.,100.,25.)",
            0.3 + Math.hypot(0.025, 0.1) + Math.hypot(0.075, 0.1),
            0,
            0.015),
        // 4 a E(e), Abramowitz and Stegun 17.3.3
        new Kind("ELLIPSEPROFILEDEF(.AREA.,$,#15,100.,50.)", 0.484422411027384, 0, Math.PI * 0.005),
        new Kind("CIRCLEPROFILEDEF(.AREA.,$,#15,100.)", 0.2 * Math.PI, 0, Math.PI * 0.01),
        new Kind(
            "CIRCLEHOLLOWPROFILEDEF(.AREA.,$,#15,100.,10.)",
            0.2 * Math.PI,
            0.18 * Math.PI,
            Math.PI * (0.01 - 0.0081)),
        new Kind(
            "ROUNDEDRECTANGLEPROFILEDEF(.AREA.,$,#15,200.,100.,20.)",
            0.6 - 4 * SAVED * 0.02,
            0,
            0.02 - 4 * CUT * 0.0004),
        new Kind(
            "RECTANGLEHOLLOWPROFILEDEF(.AREA.,$,#15,200.,100.,10.,10.,20.)",
            0.6 - 4 * SAVED * 0.02,
            0.52 - 4 * SAVED * 0.01,
            0.02 - 4 * CUT * 0.0004 - (0.18 * 0.08 - 4 * CUT * 0.0001)),
        new Kind(
            "CSHAPEPROFILEDEF(.AREA.,$,#15,200.,75.,2.,20.,3.OLD)",
            2 * lip + 0.004,
            0,
            0.002 * lip),
        new Kind(
            "ZSHAPEPROFILEDEF(.AREA.,$,#15,200.,75.,6.,8.,10.,$)",
            0.4 + 0.3 - 0.012 - 2 * SAVED * 0.01,
            0,
            2 * 0.075 * 0.008 + 0.006 * 0.184 + 2 * CUT * 0.0001),
        new Kind(
            "ARBITRARYPROFILEDEFWITHVOIDS(.AREA.,$,#124,(#126))",
            1.0,
            0.16 * Math.PI,
            0.06 - Math.PI * 0.0064),
        new Kind("COMPOSITEPROFILEDEF(.AREA.,$,(#130,#131),$)", 0.8, 0, 0.02));
  }

  /** A rectangle, a circle in it, and two squares beside each other. */
  private static final String PARTS =
      """
      #120=IFCCARTESIANPOINT((-150.,-100.));
      #121=IFCCARTESIANPOINT((150.,-100.));
      #122=IFCCARTESIANPOINT((150.,100.));
      #123=IFCCARTESIANPOINT((-150.,100.));
      #124=IFCPOLYLINE((#120,#121,#122,#123,#120));
      #126=IFCCIRCLE(#15,80.);
      #130=IFCRECTANGLEPROFILEDEF(.AREA.,$,#15,100.,100.);
      #132=IFCCARTESIANPOINT((150.,0.));
      #133=IFCAXIS2PLACEMENT2D(#132,$);
      #131=IFCRECTANGLEPROFILEDEF(.AREA.,$,#133,100.,100.);
      """;

  @ParameterizedTest
  @MethodSource("kinds")
  void measuresItsClosedFormula(Kind kind) throws IOException {
    for (String schema : List.of("IFC2X3", "IFC4", "IFC4X3")) {
      String record = kind.record().replace("OLD", schema.equals("IFC2X3") ? ",$" : "");
      Measurement.Measured m = Sketch.metre(schema, PARTS + "#110=IFC" + record + ";\n", folder);
      assertThat(m.volume().cubicMetres()).as(schema).isCloseTo(kind.area(), withPercentage(1e-6));
      assertThat(m.ledger().exposed().squareMetres())
          .as(schema)
          .isCloseTo(kind.outer(), withPercentage(1e-6));
      assertThat(m.ledger().inside().squareMetres())
          .as(schema)
          .isCloseTo(kind.inner(), withPercentage(1e-6));
    }
  }

  /** Crane rails, which only the oldest schema has. */
  @Test
  void aCraneRailIsUnresolvedByItsName() throws IOException {
    String rail =
        "#110=IFCCRANERAILFSHAPEPROFILEDEF(.AREA.,'F100',#15,80.,100.,3.,20.,30.,60.,20.,10.,$);\n";
    Takeoff takeoff =
        new Sketch("IFC2X3").add(rail).swept(100, 110, 1000).steel(200, 100).takeoff(folder);

    assertThat(Sketch.line(takeoff, 200).outcome().status()).isEqualTo(Status.UNRESOLVED);
    assertThat(takeoff.findings())
        .anySatisfy(
            f -> {
              assertThat(f.code()).isEqualTo(SurfaceFinding.SHAPE_NOT_HANDLED);
              assertThat(f.sentence()).contains("IfcCraneRailFShapeProfileDef");
            });
  }
}
