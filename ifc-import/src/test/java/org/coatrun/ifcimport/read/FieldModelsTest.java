package org.coatrun.ifcimport.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Real models: each is read, and each beam, column, member and plate of it is a member. */
class FieldModelsTest {

  private static Path model(String name) {
    Path path = Path.of(System.getProperty("coatrun.field.dir", ""), "models", name);
    assumeTrue(Files.exists(path), "the real models are not here: " + path);
    return path;
  }

  private static Building read(String name) {
    return IfcImport.read(
        List.of(model(name)),
        ImportOptions.DEFAULT.acceptingTruncated(),
        ProgressListener.silent());
  }

  private static long always(Building building) {
    return building.members().stream()
        .filter(
            m ->
                List.of("IfcBeam", "IfcColumn", "IfcMember", "IfcPlate")
                    .contains(m.identity().sourceClass().replace("StandardCase", "")))
        .count();
  }

  /** Counts by a search for the entity names in the text of each file. */
  @ParameterizedTest
  @CsvSource({
    "beam-curved-tessellated.4x3.ifc, 1",
    "beam-revolved-tapered.ifc4.ifc, 1",
    "beam-revolved.4x3.ifc, 1",
    "beam-standard-case.ifc4.ifc, 18",
    "beam-straight-tessellated.4x3.ifc, 1",
    "beam-ten-copes.2x3.ifc, 1",
    "beams-95-openings.2x3.ifc, 2",
    "beams-cardinal-points.4x3.ifc, 4",
    "beams-extrusion-paths.4x3.ifc, 2",
    "beams-profiles.4x3.ifc, 2",
    "column-extruded.4x3.ifc, 1",
    "composite-slab-named.ifc, 0",
    "duplex.2x3.ifc, 12",
    "duplicate-guids.2x3.ifc, 2",
    "encoding.ifc, 0",
    "glass-roof-5178-members.2x3.ifc, 5178",
    "grid-placement.4x3.ifc, 35",
    "housing-steelwork.2x3.ifc, 77",
    "housing-steelwork.ifczip, 77",
    "i-and-t-beams-cardinal-points.4x3.ifc, 18",
    "mapped-transformation.4x3.ifc, 0",
    "nested-mapped-items.2x3.ifc, 13",
    "newlines-in-strings.ifc, 1",
    "office-3-storeys.2x3.ifc, 8",
    "office-4-storeys.2x3.ifc, 10",
    "profiles-us-inch.ifc4.ifc, 6",
    "slab-openings.4x3.ifc, 0",
    "slab-unshared-vertices.4x3.ifc, 0",
    "steel-sections-us.ifc4.ifc, 0",
    "steel-sections-eu.ifc4.ifc, 0",
    "steel-sections-au.ifc4.ifc, 0",
    "structural-curve-member.4x3.ifc, 0",
    "truncated.2x3.ifc, 0",
    "wall-parts-inch.4x3.ifc, 6"
  })
  void eachBeamColumnMemberAndPlateIsAMember(String name, int expected) {
    Building building = read(name);
    assertThat(always(building)).isEqualTo(expected);
    for (Member member : building.members()) {
      assertThat(member.body().shape()).isNotNull();
      assertThat(member.body().placement()).isNotNull();
    }
    if (System.getProperty("coatrun.tell") != null) {
      System.err.println(name + " " + tell(building));
    }
  }

  private static String tell(Building b) {
    var s = new StringBuilder();
    s.append(b.files()).append(" storeys ").append(b.storeys().size());
    s.append(" decks ").append(b.decks().size()).append(" slabs ").append(b.slabs().size());
    s.append(" walls ").append(b.walls().size()).append(" openings ").append(b.openings().size());
    s.append(" spaces ").append(b.spaces().size()).append('\n');
    b.members().stream()
        .map(
            m ->
                m.identity().sourceClass()
                    + " "
                    + m.role()
                    + " "
                    + m.section()
                    + " "
                    + m.classification().substance()
                    + " "
                    + m.classification().evidence()
                    + " "
                    + kind(m.body()))
        .distinct()
        .limit(12)
        .forEach(x -> s.append("   ").append(x).append('\n'));
    b.decks().forEach(d -> s.append("   deck ").append(d.form()).append(d.evidence()).append('\n'));
    b.findings().stream()
        .limit(8)
        .forEach(
            f -> s.append("   ").append(f.code()).append(' ').append(f.sentence()).append('\n'));
    return s.toString();
  }

  private static String kind(Body body) {
    String text = body.shape().toString();
    return text.substring(0, Math.min(110, text.length()));
  }

  /** The parameters that the file states; IPE200 as EN 10365 has it. */
  @Test
  void readsTheSampleProfileInMetres() {
    Building building = read("column-extruded.4x3.ifc");
    Shape shape = building.members().get(0).body().shape();
    assertThat(shape).isInstanceOf(Shape.Extrusion.class);
    var extrusion = (Shape.Extrusion) shape;
    assertThat(extrusion.depth()).isEqualTo(2.0);
    var profile = (Profile.IShape) extrusion.profile();
    assertThat(profile.depth()).isEqualTo(0.2);
    assertThat(profile.width()).isEqualTo(0.1);
    assertThat(profile.web()).isEqualTo(0.0056);
    assertThat(profile.flange()).isEqualTo(0.0085);
    assertThat(profile.fillet()).hasValue(0.012);
  }

  /** The library holds 2,091 parametric sections and 639 double angles. */
  @Test
  void readsASectionLibrary() {
    List<Profile> profiles =
        IfcImport.profiles(model("steel-sections-us.ifc4.ifc"), ImportOptions.DEFAULT);
    assertThat(profiles).hasSizeGreaterThanOrEqualTo(2091);
    assertThat(profiles).noneMatch(p -> p instanceof Profile.Unsupported);
  }
}
