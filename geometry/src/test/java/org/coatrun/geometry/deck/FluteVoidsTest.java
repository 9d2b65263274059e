package org.coatrun.geometry.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.coatrun.geometry.surface.Progress;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.FluteVoid;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.SoffitMeasure;
import org.junit.jupiter.api.Test;

/**
 * A W16X26 under a 3 in composite deck: flat it measures PA of the AISC Shapes Database v15.0 (46.7
 * in), under flutes across it PA and the open part of its flange (5.5 in wide). The deck's rib is
 * 12 in from the next, 4¾ in wide at its bottom and 7¼ in at its top (common practice); voids and
 * soffit follow from the trapezoid by hand.
 */
class FluteVoidsTest {

  private static final double IN = 0.0254;
  private static final double PA = 46.7 * IN;
  private static final double FLANGE = 5.5 * IN;
  private static final double LENGTH = 6.096;
  private static final double PITCH = 12 * IN;
  private static final double OPEN = (12 - 4.75) / 12;
  private static final double VOID = 3 * (24 - 4.75 - 7.25) / 2 * IN * IN / PITCH;
  private static final double SIDE = Math.hypot(3, 1.25);

  private final List<Member> members = new ArrayList<>();
  private final List<Deck> decks = new ArrayList<>();
  private Transform3 turned = Transform3.IDENTITY;

  private void beam(long step, boolean alongX) {
    Profile w16x26 =
        new Profile.IShape(
            "W16X26",
            FLANGE,
            15.7 * IN,
            0.25 * IN,
            0.345 * IN,
            OptionalDouble.of(0.402 * IN),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    Vec3 foot = new Vec3(0, 0, -15.7 * IN / 2);
    Transform3 lying =
        alongX
            ? new Transform3(Vec3.Y, Vec3.Z, Vec3.X, foot)
            : new Transform3(Vec3.X.times(-1), Vec3.Z, Vec3.Y, foot);
    Transform3 back = Transform3.translation((alongX ? Vec3.X : Vec3.Y).times(-LENGTH / 2));
    members.add(
        new Member(
            Identity.of(step, "beam"),
            Role.BEAM,
            SectionName.NONE,
            new Classification(Substance.STEEL, List.of()),
            List.of(),
            Properties.none(),
            Body.of(turned.after(back), new Shape.Extrusion(w16x26, lying, Vec3.Z, LENGTH))));
  }

  /** Ribs along y, 20 pitches wide in x about the middle. */
  private void flutedDeck(long step) {
    var points = new ArrayList<Vec2>();
    for (int i = -10; i < 10; i++) {
      double x = i * PITCH;
      points.add(new Vec2(x + 2.375 * IN, 3 * IN));
      points.add(new Vec2(x + 3.625 * IN, 0));
      points.add(new Vec2(x + 8.375 * IN, 0));
      points.add(new Vec2(x + 9.625 * IN, 3 * IN));
    }
    points.add(new Vec2(10 * PITCH, 3 * IN));
    points.add(new Vec2(10 * PITCH, 6 * IN));
    points.add(new Vec2(-10 * PITCH, 6 * IN));
    points.add(new Vec2(-10 * PITCH, 3 * IN));
    Profile profile = new Profile.Outline("", Curve2.polyline(points, true), List.of());
    Transform3 standing = new Transform3(Vec3.X, Vec3.Z, Vec3.Y.times(-1), new Vec3(0, 4, 0));
    deck(step, Deck.Form.SLAB_ON_DECK, new Shape.Extrusion(profile, standing, Vec3.Z, 8));
  }

  private void flatDeck(long step) {
    Profile plate = new Profile.Rectangle("", 20 * PITCH, 8, 0);
    deck(step, Deck.Form.FLAT, new Shape.Extrusion(plate, Transform3.IDENTITY, Vec3.Z, 0.15));
  }

  private void deck(long step, Deck.Form form, Shape shape) {
    decks.add(
        new Deck(
            Identity.of(step, "deck"),
            form,
            false,
            List.of(),
            List.of(),
            Properties.none(),
            Body.of(turned, shape)));
  }

  private Measurement.Measured measured(long step, SurfaceOptions options) {
    Building building =
        new Building(
            "",
            Vec3.ZERO,
            List.of(),
            List.of(),
            members,
            decks,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.<Finding>of());
    return SurfaceTakeoff.measure(building, options, Progress.silent())
        .measurements()
        .values()
        .stream()
        .filter(m -> m.id().step() == step)
        .map(Measurement.Measured.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void underAFlatDeckItMeasuresPa() {
    beam(1, true);
    flatDeck(2);
    Measurement.Measured m = measured(1, new SurfaceOptions(1));
    assertThat(m.ledger().exposed().squareMetres()).isCloseTo(PA * LENGTH, withPercentage(0.3));
    assertThat(m.fluteVoids()).isEmpty();
  }

  @Test
  void underFlutesAcrossItTheOpenPartOfTheFlangeComesOnTop() {
    for (boolean oblique : new boolean[] {false, true}) {
      members.clear();
      decks.clear();
      turned =
          oblique
              ? Transform3.frame(new Vec3(5, 7, 3), new Vec3(0.1, 0, 1), new Vec3(1, 0.4, -0.1))
              : Transform3.IDENTITY;
      beam(1, true);
      flutedDeck(2);
      Measurement.Measured m = measured(1, new SurfaceOptions(1));
      double open = OPEN * FLANGE * LENGTH;
      assertThat(m.ledger().exposed().squareMetres())
          .isCloseTo(PA * LENGTH + open, withPercentage(0.3));
      FluteVoid v = m.fluteVoids().get(0);
      assertThat(v.flange().squareMetres()).isCloseTo(open, within(1e-9));
      assertThat(v.volume().cubicMetres()).isCloseTo(VOID * FLANGE * LENGTH, within(1e-9));
      double developed = (12 - 7.25 + 2 * SIDE) / 12;
      assertThat(v.soffit().squareMetres()).isCloseTo(developed * FLANGE * LENGTH, within(1e-9));
    }
  }

  @Test
  void flutesAlongItLeaveNoVoidsToFill() {
    beam(1, false);
    flutedDeck(2);
    assertThat(measured(1, new SurfaceOptions(1)).fluteVoids()).isEmpty();
  }

  @Test
  void theSoffitIsTheSheetUnfoldedLessTheFlangesUnderIt() {
    beam(1, true);
    flutedDeck(2);
    Measurement.Measured m = measured(2, new SurfaceOptions(1));
    SoffitMeasure soffit = m.soffit().orElseThrow();
    double plan = 20 * PITCH * 8;
    double factor = (12 - 7.25 + 4.75 + 2 * SIDE) / 12;
    assertThat(soffit.fluted()).isTrue();
    assertThat(soffit.plan().squareMetres()).isCloseTo(plan, within(1e-9));
    assertThat(soffit.drawn().squareMetres()).isCloseTo(plan * factor, within(1e-9));
    assertThat(m.ledger().covered().squareMetres())
        .isCloseTo((1 - OPEN) * FLANGE * LENGTH, within(1e-9));
  }

  @Test
  void aDeckDrawnFlatHasNoFlutes() {
    flatDeck(2);
    SoffitMeasure soffit = measured(2, new SurfaceOptions(1)).soffit().orElseThrow();
    assertThat(soffit.fluted()).isFalse();
    assertThat(soffit.drawn().squareMetres()).isCloseTo(20 * PITCH * 8, within(1e-9));
  }
}
