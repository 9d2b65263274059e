package org.coatrun.cli.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coatrun.geometry.exposure.BodyTree;
import org.coatrun.geometry.solid.Boundary;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.geometry.solid.Tolerance;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Member;
import org.junit.jupiter.api.Test;

/**
 * A roof of 5,178 tubes, all of one section 100 by 200 by 6.3 mm with sharp corners, each carried
 * straight: faces and volume follow from the lengths that stand in the file.
 */
class GlassRoofTest {

  private static final double OUTER = 2 * (0.1 + 0.2);
  private static final double INNER = 2 * (0.1 - 2 * 0.0063 + 0.2 - 2 * 0.0063);
  private static final double STEEL = 0.1 * 0.2 - (0.1 - 2 * 0.0063) * (0.2 - 2 * 0.0063);
  private static final Pattern TUBE =
      Pattern.compile("IFCEXTRUDEDAREASOLID\\(#19,#\\d+,#\\d+,([0-9.E+-]+)\\)");

  @Test
  void facesAndVolumeOfEachTubeFollowFromItsLength() throws IOException {
    Path file = FieldFiles.of("models/glass-roof-5178-members.2x3.ifc");
    double[] lengths = lengths(file);
    Building building =
        IfcImport.read(List.of(file), ImportOptions.DEFAULT, ProgressListener.silent());
    assertThat(building.members()).hasSize(5178);
    assertThat(lengths).hasSize(5178);
    Kernel kernel = new Kernel(Tolerance.DEFAULT);
    double[] areas = new double[lengths.length];
    double[] volumes = new double[lengths.length];
    for (int i = 0; i < lengths.length; i++) {
      BodyTree.Result.Made made = made(building.members().get(i));
      Boundary boundary = Boundary.of(Originals.of(made.tree(), kernel.tolerance()), kernel);
      areas[i] = boundary.area();
      volumes[i] = boundary.volume() * made.fullness();
    }
    Arrays.sort(lengths);
    Arrays.sort(areas);
    Arrays.sort(volumes);
    for (int i = 0; i < lengths.length; i++) {
      double area = (OUTER + INNER) * lengths[i] + 2 * STEEL;
      double volume = STEEL * lengths[i];
      assertThat(areas[i]).isCloseTo(area, within(1e-9 * area));
      assertThat(volumes[i]).isCloseTo(volume, within(1e-9 * volume));
    }
  }

  private static BodyTree.Result.Made made(Member member) {
    return (BodyTree.Result.Made) BodyTree.of(member.body().shape(), member.body().placement());
  }

  /** Read from the bytes, not by the program's reader. */
  private static double[] lengths(Path file) throws IOException {
    Matcher m = TUBE.matcher(Files.readString(file, StandardCharsets.ISO_8859_1));
    return m.results().mapToDouble(r -> Double.parseDouble(r.group(1))).toArray();
  }
}
