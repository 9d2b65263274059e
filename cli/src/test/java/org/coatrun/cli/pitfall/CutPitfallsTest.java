package org.coatrun.cli.pitfall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.io.IOException;
import java.nio.file.Path;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.surface.Measurement;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cuts: faults 5, 6 and 8 of the list in {@link PitfallListTest}. */
class CutPitfallsTest {

  @TempDir Path folder;

  private static final String HALF_SPACE =
      """
      #103=IFCCARTESIANPOINT((0.,0.,900.));
      #104=IFCAXIS2PLACEMENT3D(#103,$,$);
      #105=IFCPLANE(#104);
      #106=IFCHALFSPACESOLID(#105,%s);
      #100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#110,#106);
      """;

  /** Fault 5: of a sheet of 0.7 mm, 400 mm wide and cut at 900 of 1000 mm, the closed formula. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void thinSheetIsCutLikeAnyOtherBody(String schema) throws IOException {
    Sketch sketch =
        new Sketch(schema)
            .add("#101=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,400.,0.7);\n")
            .swept(110, 101, 1000)
            .add(HALF_SPACE.formatted(".F."));
    Measurement.Measured m = sketch.steel(200, 100).only(folder);
    assertThat(m.volume().cubicMetres()).isCloseTo(0.4 * 0.0007 * 0.9, withPercentage(1e-6));
    assertThat(m.ledger().body().squareMetres())
        .isCloseTo(2 * (0.4 + 0.0007) * 0.9 + 2 * 0.4 * 0.0007, withPercentage(1e-6));
  }

  /**
   * Fault 6: the file decides which side of a cut stays (ISO 16739: with the flag true the normal
   * points away from the material that is taken off); against the length that it states, the
   * shorter piece is doubted.
   */
  @ParameterizedTest
  @CsvSource({
    "IFC2X3, .F., 0.9, 0", "IFC2X3, .T., 0.1, 1",
    "IFC4, .F., 0.9, 0", "IFC4, .T., 0.1, 1",
    "IFC4X3, .F., 0.9, 0", "IFC4X3, .T., 0.1, 1"
  })
  void theFileDecidesWhichPieceStaysAndAnOffcutIsDoubted(
      String schema, String flag, double left, int doubts) throws IOException {
    Sketch sketch = new Sketch(schema).bar(110, 1000).add(HALF_SPACE.formatted(flag));
    sketch
        .steel(200, 100)
        .add("#400=IFCQUANTITYLENGTH('Length',$,$,1000.%s);\n".formatted(sketch.newer(",$")))
        .add("#401=IFCELEMENTQUANTITY(%s,'Q',$,$,(#400));\n".formatted(sketch.root()))
        .add("#402=IFCRELDEFINESBYPROPERTIES(%s,$,$,(#200),#401);\n".formatted(sketch.root()));
    Takeoff takeoff = sketch.takeoff(folder);
    assertThat(takeoff.memberTotals().length().metres()).isCloseTo(left, within(1e-9));
    assertThat(takeoff.findings())
        .filteredOn(f -> f.code() == SurfaceFinding.SHORT_PIECE)
        .hasSize(doubts);
  }

  /** Fault 8: a hole of 300 by 300 mm drawn 5 m beside its beam changes nothing and is said. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void anOpeningOffItsHostChangesNothingAndIsSaid(String schema) throws IOException {
    for (boolean aside : new boolean[] {true, false}) {
      Sketch sketch =
          new Sketch(schema)
              .add("#111=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,1000.,20.);\n")
              .swept(110, 111, 1000)
              .steel(200, 110)
              .add("#301=IFCCARTESIANPOINT((%s,0.,350.));\n".formatted(aside ? "5000." : "0."))
              .add("#302=IFCAXIS2PLACEMENT3D(#301,$,$);\n#303=IFCLOCALPLACEMENT($,#302);\n")
              .add("#304=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,300.,300.);\n")
              .swept(305, 304, 300)
              .shape(310, 305);
      sketch
          .add(
              "#320=IFCOPENINGELEMENT(%s,'hole',$,$,#303,#310,$%s);\n"
                  .formatted(sketch.root(), sketch.newer(",$")))
          .add("#321=IFCRELVOIDSELEMENT(%s,$,$,#200,#320);\n".formatted(sketch.root()));
      Takeoff takeoff = sketch.takeoff(folder);
      double hole = aside ? 0 : 2 * 0.3 * 0.3 - 4 * 0.3 * 0.02;
      assertThat(takeoff.memberTotals().body().squareMetres())
          .isCloseTo(2 * (1 + 0.02) * 1 + 2 * 0.02 - hole, within(1e-9));
      assertThat(takeoff.findings())
          .filteredOn(f -> f.code() == SurfaceFinding.IDLE_OPENING)
          .hasSize(aside ? 1 : 0);
    }
  }
}
