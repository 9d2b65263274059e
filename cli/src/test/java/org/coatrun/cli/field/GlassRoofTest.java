package org.coatrun.cli.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
  private static final Pattern RECORD =
      Pattern.compile(
          "#(\\d+)= *IFC(MEMBER|BEAM|PRODUCTDEFINITIONSHAPE|SHAPEREPRESENTATION|EXTRUDEDAREASOLID)"
              + "\\((.*)\\);");
  private static final Pattern REFERENCE = Pattern.compile("#(\\d+)");

  @Test
  void facesAndVolumeOfEachTubeFollowFromItsLength() throws IOException {
    Path file = FieldFiles.of("models/glass-roof-5178-members.2x3.ifc");
    Map<Long, Double> lengths = lengths(file);
    Building building =
        IfcImport.read(List.of(file), ImportOptions.DEFAULT, ProgressListener.silent());
    assertThat(building.members()).hasSize(5178);
    assertThat(lengths).hasSize(5178);
    Kernel kernel = new Kernel(Tolerance.DEFAULT);
    double total = 0;
    double expected = 0;
    for (Member member : building.members()) {
      double length = lengths.get(member.id().step());
      double area = (OUTER + INNER) * length + 2 * STEEL;
      BodyTree.Result.Made made = made(member);
      Boundary boundary = Boundary.of(Originals.of(made.tree(), kernel.tolerance()), kernel);
      assertThat(boundary.area()).isCloseTo(area, within(1e-9 * area));
      assertThat(boundary.volume() * made.fullness())
          .isCloseTo(STEEL * length, within(1e-9 * STEEL * length));
      total += boundary.area();
      expected += area;
    }
    assertThat(total).isCloseTo(expected, within(1e-9 * expected));
  }

  private static BodyTree.Result.Made made(Member member) {
    return (BodyTree.Result.Made) BodyTree.of(member.body().shape(), member.body().placement());
  }

  /** The length of each member's tube, followed through the bytes, not by the program's reader. */
  private static Map<Long, Double> lengths(Path file) throws IOException {
    Map<Long, String> kinds = new HashMap<>();
    Map<Long, String> bodies = new HashMap<>();
    Matcher m = RECORD.matcher(Files.readString(file, StandardCharsets.ISO_8859_1));
    while (m.find()) {
      kinds.put(Long.parseLong(m.group(1)), m.group(2));
      bodies.put(Long.parseLong(m.group(1)), m.group(3));
    }
    Map<Long, Double> lengths = new HashMap<>();
    kinds.forEach(
        (id, kind) -> {
          if (kind.equals("MEMBER") || kind.equals("BEAM")) {
            long shape = next(id, "PRODUCTDEFINITIONSHAPE", kinds, bodies);
            long drawn = next(shape, "SHAPEREPRESENTATION", kinds, bodies);
            String solid = bodies.get(next(drawn, "EXTRUDEDAREASOLID", kinds, bodies));
            assertThat(solid).startsWith("#19,");
            lengths.put(id, Double.parseDouble(solid.substring(solid.lastIndexOf(',') + 1)));
          }
        });
    return lengths;
  }

  /** The one record of a kind that a record names. */
  private static long next(
      long from, String kind, Map<Long, String> kinds, Map<Long, String> bodies) {
    List<Long> found =
        REFERENCE
            .matcher(bodies.get(from))
            .results()
            .map(r -> Long.parseLong(r.group(1)))
            .filter(id -> kind.equals(kinds.get(id)))
            .toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }
}
