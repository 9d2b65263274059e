package org.coatrun.cli.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
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
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.surface.Surfaces;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The corner factor of the coat about each member of whole buildings within what plane geometry
 * allows: the area within a distance t of a convex outline is its own, P t and π t² (Steiner's
 * formula); a square concave corner takes t² off, and no section here has more than four. Two
 * flanges close together share more, by a coat of 1 in no more than a little.
 */
class CoatBoundsTest {

  private static final double LEAST = -4.5;

  @Test
  void ofTheDemonstrationBuilding() {
    Path model = Path.of(System.getProperty("coatrun.root"), "test-models/harbour-office.ifc");
    assertThat(sectionsWithin(model)).isGreaterThan(500);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "duplex.2x3.ifc",
        "housing-steelwork.2x3.ifc",
        "beam-revolved-tapered.ifc4.ifc",
        "glass-roof-5178-members.2x3.ifc"
      })
  void ofRealModels(String name) throws IOException {
    assertThat(sectionsWithin(FieldFiles.of("models/" + name))).isPositive();
  }

  private static int sectionsWithin(Path model) {
    Building building =
        IfcImport.read(List.of(model), ImportOptions.DEFAULT, ProgressListener.silent());
    Surfaces surfaces =
        SurfaceTakeoff.measure(building, SurfaceOptions.defaults(), Progress.silent());
    int sections = 0;
    for (Member member : building.members()) {
      if (surfaces.of(member.id()).orElse(null) instanceof Measurement.Measured m
          && m.section().isPresent()) {
        SectionMeasure section = m.section().get();
        assertThat(section.cornerFactor())
            .as("%s, heated %s", member.identity().guid(), section.heated())
            .isBetween(LEAST, Math.PI + 1e-6);
        sections++;
      }
    }
    return sections;
  }
}
