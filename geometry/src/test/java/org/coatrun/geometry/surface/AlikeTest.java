package org.coatrun.geometry.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.ModelFile;
import org.coatrun.shared.model.Opening;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.Surfaces;
import org.junit.jupiter.api.Test;

/** Bodies that are alike and stand alike are measured once; those that are not, are not. */
class AlikeTest {

  /** Odd steps, so that digits are lost on the way up and along. */
  private static final Vec3 STOREY = new Vec3(0.1, 1.0 / 3, 3.7);

  private final List<Member> members = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();

  @Test
  void whatStandsAlikeMeasuresAlikeToTheLastDigit() {
    for (int i = 0; i < 12; i++) {
      barUnderPlate(10L * i, STOREY.times(i));
    }
    Surfaces surfaces = measured();
    for (int i = 0; i < 12; i++) {
      Measurement.Measured bar = of(surfaces, 10L * i + 1);
      assertThat(bar.ledger()).isEqualTo(of(surfaces, 1).ledger());
      assertThat(bar.section()).isEqualTo(of(surfaces, 1).section());
      assertThat(bar.covers().stream().map(Cover::by))
          .containsExactly(new ElementId(0, 10L * i + 2));
      assertThat(bar.ledger().covered().squareMetres()).isCloseTo(0.1 * 0.2, within(1e-12));
    }
  }

  @Test
  void theFirstOfSeveralAlikeDecidesNothing() {
    for (int i = 0; i < 5; i++) {
      barUnderPlate(10L * i, STOREY.times(i));
    }
    Surfaces all = measured();
    members.subList(0, 2).clear();
    Surfaces without = measured();
    for (int i = 1; i < 5; i++) {
      for (long step : new long[] {10L * i + 1, 10L * i + 2}) {
        assertThat(of(without, step)).isEqualTo(of(all, step));
      }
    }
  }

  @Test
  void likeShapesTurnedOrSpacedOtherwiseAreApart() {
    barUnderPlate(0, Vec3.ZERO);
    Vec3 apart = new Vec3(20, 0, 0);
    bar(11, new Transform3(Vec3.Y, Vec3.X.times(-1), Vec3.Z, apart));
    plate(12, apart);
    Vec3 gone = new Vec3(40, 0, 0);
    bar(21, Transform3.translation(gone));
    plate(22, gone.plus(new Vec3(0, 0, 0.011)));
    Surfaces surfaces = measured();
    assertThat(of(surfaces, 1).ledger().covered().squareMetres())
        .isCloseTo(0.1 * 0.2, within(1e-12));
    // a quarter turn takes the second from under its plate, and the third's lies too high
    assertThat(of(surfaces, 11).covers()).isEmpty();
    assertThat(of(surfaces, 21).covers()).isEmpty();
  }

  @Test
  void aShapeDrawnFarFromItsOwnOriginIsMeasuredAsIfItWereNear() {
    Vec3 far = new Vec3(512_345.125, -4_611_222.5, 30);
    Shape drawn =
        new Shape.Placed(Transform3.translation(far), new Shape.Block(at(Vec3.ZERO), 3, 0.1, 0.2));
    member(1, Role.BEAM, Body.of(Transform3.translation(far.times(-1)), drawn));
    plate(2, Vec3.ZERO);
    Surfaces surfaces = measured();
    assertThat(of(surfaces, 1).ledger().body().squareMetres())
        .isCloseTo(2 * (0.3 + 0.6 + 0.02), within(1e-8));
    assertThat(of(surfaces, 1).ledger().covered().squareMetres())
        .isCloseTo(0.1 * 0.2, within(1e-8));
    assertThat(surfaces.extent(new ElementId(0, 1)).orElseThrow().low().x())
        .isCloseTo(0, within(1e-8));
  }

  @Test
  void eachOfSeveralAlikeNamesItsOwnOpening() {
    for (int i = 0; i < 3; i++) {
      Vec3 place = STOREY.times(i);
      bar(10L * i + 1, at(place));
      Body beside =
          Body.of(at(place.plus(new Vec3(0, 5, 0))), new Shape.Block(at(Vec3.ZERO), 1, 1, 1));
      openings.add(
          new Opening(
              Identity.of(10L * i + 5, "o"),
              new ElementId(0, 10L * i + 1),
              Opening.Fill.NOTHING,
              beside));
    }
    List<Finding> idle =
        measured().findings().stream()
            .filter(f -> f.code() == SurfaceFinding.IDLE_OPENING)
            .toList();
    assertThat(idle.stream().map(Finding::step)).containsExactly(1L, 11L, 21L);
    assertThat(idle.get(2).sentence()).contains("#25");
  }

  /** A bar of 3 m with a plate of 0.2 m on it. */
  private void barUnderPlate(long first, Vec3 at) {
    bar(first + 1, at(at));
    plate(first + 2, at);
  }

  private void bar(long step, Transform3 at) {
    member(step, Role.BEAM, Body.of(at, new Shape.Block(at(Vec3.ZERO), 3, 0.1, 0.2)));
  }

  private void plate(long step, Vec3 bar) {
    Vec3 on = bar.plus(new Vec3(1.4, 0, 0.2));
    member(step, Role.PLATE, Body.of(at(on), new Shape.Block(at(Vec3.ZERO), 0.2, 0.3, 0.01)));
  }

  private void member(long step, Role role, Body body) {
    members.add(
        new Member(
            Identity.of(step, "m"),
            role,
            SectionName.NONE,
            new Classification(Substance.STEEL, List.of()),
            List.of(),
            Properties.none(),
            body));
  }

  private static Transform3 at(Vec3 origin) {
    return Transform3.translation(origin);
  }

  private static Measurement.Measured of(Surfaces surfaces, long step) {
    return (Measurement.Measured) surfaces.of(new ElementId(0, step)).orElseThrow();
  }

  private Surfaces measured() {
    Building building =
        new Building(
            "Net Loft",
            Vec3.ZERO,
            List.of(new ModelFile("loft.ifc", "IFC4", "IFC4", "metre", 1, "")),
            List.of(),
            members,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            openings,
            List.of());
    return SurfaceTakeoff.measure(building, new SurfaceOptions(2), Progress.silent());
  }
}
