package org.coatrun.cli.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.nio.file.Path;
import java.util.List;
import org.coatrun.geometry.surface.Progress;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.surface.Measurement;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sample beams that buildingSMART publishes with IFC 4.3 (IFC4.3.x sample models, building
 * elements), from the file to their surface. Perimeter and area follow in closed form from the
 * parameters that the files state.
 */
class SampleBeamsTest {

  private static final double TENTH_OF_A_PER_CENT = 0.1;

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    // file, section, how many, length in m, perimeter in mm, area in mm2
    "i-and-t-beams-cardinal-points.4x3.ifc, IPE220, 9, 2.0, 847.598, 3337.05",
    "i-and-t-beams-cardinal-points.4x3.ifc, 1/2IPE300, 9, 3.0, 587.124, 2690.60",
    "beam-standard-case.ifc4.ifc, IPE220, 9, 2.0, 847.598, 3337.05",
    "beam-standard-case.ifc4.ifc, 1/2IPE300, 9, 3.0, 587.124, 2690.60",
    "beams-profiles.4x3.ifc, IPE200, 1, 1.0, 768.198, 2848.41",
    "beams-profiles.4x3.ifc, CHS219.1X6.3, 1, 1.0, 688.323, 4211.74",
    "column-extruded.4x3.ifc, IPE200, 1, 2.0, 768.198, 2848.41",
    "beams-cardinal-points.4x3.ifc, IPE200, 4, 1.0, 768.198, 2848.41"
  })
  void measureWhatTheirParametersSay(
      String file, String section, int count, double length, double perimeter, double area) {
    Building building = read(FieldFiles.of("models/" + file));
    List<Member> members =
        building.members().stream().filter(m -> m.section().name().equals(section)).toList();
    assertThat(members).hasSize(count);
    for (Member member : members) {
      Measurement.Measured m = alone(building, member);
      double contour = perimeter / 1000;
      double steel = area / 1e6;
      near(m.length().metres(), length);
      near(m.ledger().exposed().squareMetres(), contour * length);
      near(m.ledger().ends().squareMetres(), 2 * steel);
      near(m.volume().cubicMetres(), steel * length);
      near(m.section().orElseThrow().outline().metres(), contour);
      near(m.section().orElseThrow().steel().squareMetres(), steel);
    }
  }

  private static void near(double found, double expected) {
    assertThat(found).isCloseTo(expected, withPercentage(TENTH_OF_A_PER_CENT));
  }

  private static Building read(Path file) {
    return IfcImport.read(List.of(file), ImportOptions.DEFAULT, ProgressListener.silent());
  }

  /** Some samples lie on each other, to show their axes. */
  private static Measurement.Measured alone(Building b, Member member) {
    var alone =
        new Building(
            b.name(),
            b.origin(),
            b.files(),
            b.storeys(),
            List.of(member),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    return (Measurement.Measured)
        SurfaceTakeoff.measure(alone, SurfaceOptions.defaults(), Progress.silent())
            .of(member.id())
            .orElseThrow();
  }
}
