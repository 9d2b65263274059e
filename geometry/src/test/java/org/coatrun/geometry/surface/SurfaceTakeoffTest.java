package org.coatrun.geometry.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.ModelFile;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.Surfaces;
import org.junit.jupiter.api.Test;

class SurfaceTakeoffTest {

  private static final OptionalDouble NO = OptionalDouble.empty();

  @Test
  void aWideFlangeMeasuresItsContourTimesItsLength() {
    // W16X26 by the AISC Shapes Database v15.0: PB 52.2 in, A 7.68 in2; 20 ft long
    Shape shape =
        extrusion(
            new Profile.IShape(
                "W16X26",
                5.5 * 0.0254,
                15.7 * 0.0254,
                0.25 * 0.0254,
                0.345 * 0.0254,
                OptionalDouble.of(0.402 * 0.0254),
                NO,
                NO),
            20 * 0.3048);
    Measurement.Measured m = measured(shape, Role.BEAM);
    assertThat(m.length().feet()).isCloseTo(20, withPercentage(1e-9));
    assertThat(m.ledger().exposed().squareFeet()).isCloseTo(52.2 / 12 * 20, withPercentage(0.3));
    assertThat(m.ledger().ends().squareInches()).isCloseTo(2 * 7.68, withPercentage(1));
    assertThat(m.section().orElseThrow().heated().inches()).isCloseTo(52.2, withPercentage(0.3));
    assertThat(m.volume().cubicMetres())
        .isCloseTo(
            m.section().orElseThrow().steel().squareMetres() * m.length().metres(),
            withPercentage(1e-9));
  }

  @Test
  void theInsideOfATubeIsApart() {
    Measurement.Measured m =
        measured(extrusion(new Profile.CircleHollow("CHS 200x10", 0.1, 0.01), 3), Role.COLUMN);
    assertThat(m.ledger().exposed().squareMetres())
        .isCloseTo(2 * Math.PI * 0.1 * 3, withPercentage(1e-9));
    assertThat(m.ledger().inside().squareMetres())
        .isCloseTo(2 * Math.PI * 0.09 * 3, withPercentage(1e-9));
    assertThat(m.ledger().ends().squareMetres())
        .isCloseTo(2 * Math.PI * (0.01 - 0.0081), withPercentage(1e-9));
  }

  /** A fillet of 100 mm has no room between flanges that stand out 96 mm. */
  @Test
  void radiiWithoutRoomAreLeftOutAndSaid() {
    for (double fillet : new double[] {0.02, 0.1}) {
      Shape shape =
          extrusion(
              new Profile.IShape("", 0.2, 0.4, 0.008, 0.012, OptionalDouble.of(fillet), NO, NO), 1);
      Building one = building(List.of(member(1, Body.of(Transform3.IDENTITY, shape))));
      Surfaces surfaces = SurfaceTakeoff.measure(one, new SurfaceOptions(1), Progress.silent());
      assertThat(surfaces.findings())
          .extracting(f -> f.code())
          .isEqualTo(fillet < 0.05 ? List.of() : List.of(SurfaceFinding.RADII_LEFT_OUT));
    }
  }

  @Test
  void aPlateHasNoSection() {
    Measurement.Measured m =
        measured(extrusion(new Profile.Rectangle("", 0.3, 0.2, 0), 0.01), Role.PLATE);
    assertThat(m.section()).isEmpty();
    assertThat(m.ledger().body().squareMetres())
        .isCloseTo(2 * (0.06 + 0.003 + 0.002), withPercentage(1e-9));
  }

  @Test
  void whatCannotBeMeasuredIsUnresolvedAndNamed() {
    Building building =
        building(
            List.of(
                member(1, Body.of(Transform3.IDENTITY, new Shape.Unsupported("FancySolid", ""))),
                member(2, Body.none()),
                member(
                    3,
                    Body.of(
                        Transform3.IDENTITY,
                        extrusion(new Profile.CircleHollow("CHS", 0.1, 0.2), 3)))));
    Surfaces surfaces = SurfaceTakeoff.measure(building, new SurfaceOptions(2), Progress.silent());
    assertThat(surfaces.measurements().values())
        .allSatisfy(m -> assertThat(m).isInstanceOf(Measurement.Unresolved.class));
    assertThat(surfaces.findings().stream().map(Finding::code))
        .containsExactly(
            SurfaceFinding.SHAPE_NOT_HANDLED,
            SurfaceFinding.IMPOSSIBLE_SECTION,
            SurfaceFinding.NO_BODY);
    assertThat(surfaces.findings().get(0).sentence()).contains("FancySolid");
  }

  @Test
  void theNumberOfThreadsChangesNothing() {
    var members = new ArrayList<Member>();
    for (int i = 1; i < 40; i++) {
      Shape shape = extrusion(new Profile.Rectangle("", 0.1 * i, 0.2, 0), i);
      members.add(member(i, Body.of(Transform3.IDENTITY, shape)));
    }
    Building building = building(members);
    assertThat(SurfaceTakeoff.measure(building, new SurfaceOptions(1), Progress.silent()))
        .isEqualTo(SurfaceTakeoff.measure(building, new SurfaceOptions(4), Progress.silent()));
  }

  private static Measurement.Measured measured(Shape shape, Role role) {
    Building building = building(List.of(member(1, role, Body.of(Transform3.IDENTITY, shape))));
    Surfaces surfaces =
        SurfaceTakeoff.measure(building, SurfaceOptions.defaults(), Progress.silent());
    return (Measurement.Measured) surfaces.measurements().values().iterator().next();
  }

  private static Shape extrusion(Profile profile, double length) {
    return new Shape.Extrusion(profile, Transform3.IDENTITY, Vec3.Z, length);
  }

  private static Member member(long step, Body body) {
    return member(step, Role.BEAM, body);
  }

  private static Member member(long step, Role role, Body body) {
    return new Member(
        Identity.of(step, "m"),
        role,
        SectionName.NONE,
        new Classification(Substance.STEEL, List.of()),
        List.of(),
        Properties.none(),
        body);
  }

  private static Building building(List<Member> members) {
    return new Building(
        "",
        Vec3.ZERO,
        List.of(new ModelFile("a.ifc", "IFC4", "IFC4", "metre", 1, "")),
        List.of(),
        members,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }
}
