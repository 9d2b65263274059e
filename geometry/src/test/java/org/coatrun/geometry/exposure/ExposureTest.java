package org.coatrun.geometry.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.coatrun.geometry.surface.Progress;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Bulk;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Opening;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.model.Wall;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.Surfaces;
import org.junit.jupiter.api.Test;

/** What neighbours cover, against areas that follow from the drawing by hand. */
class ExposureTest {

  private static final OptionalDouble SHARP = OptionalDouble.of(0);

  /** An I of 200 × 400 with an 8 mm web and 12 mm flanges: contour 4·0.2 + 2·0.4 - 2·0.008. */
  private static final Profile I =
      new Profile.IShape("", 0.2, 0.4, 0.008, 0.012, SHARP, SHARP, SHARP);

  private static final double CONTOUR = 4 * 0.2 + 2 * 0.4 - 2 * 0.008;

  private final List<Member> members = new ArrayList<>();
  private final List<Slab> slabs = new ArrayList<>();
  private final List<Bulk> bulks = new ArrayList<>();
  private final List<Wall> walls = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private Transform3 turned = Transform3.IDENTITY;

  private static Shape block(double x, double y, double z, double dx, double dy, double dz) {
    return new Shape.Extrusion(
        new Profile.Rectangle("", dx, dy, 0),
        Transform3.translation(new Vec3(x + dx / 2, y + dy / 2, z)),
        Vec3.Z,
        dz);
  }

  /** A beam along x with its top at z = 0. */
  private static Shape beam(double length) {
    Transform3 lying = new Transform3(Vec3.Y, Vec3.Z, Vec3.X, new Vec3(0, 0, -0.2));
    return new Shape.Extrusion(I, lying, Vec3.Z, length);
  }

  private void steel(long step, Role role, Shape shape) {
    members.add(
        new Member(
            Identity.of(step, "s" + step),
            role,
            SectionName.NONE,
            new Classification(Substance.STEEL, List.of()),
            List.of(),
            Properties.none(),
            Body.of(turned, shape)));
  }

  private void slab(long step, Shape shape) {
    slabs.add(
        new Slab(
            Identity.of(step, "slab"),
            Slab.Kind.FLOOR,
            List.of(),
            Properties.none(),
            Body.of(turned, shape)));
  }

  private void wall(Shape shape) {
    walls.add(
        new Wall(
            Identity.of(2, "wall"),
            new Classification(Substance.CONCRETE, List.of()),
            List.of(),
            Properties.none(),
            Body.of(turned, shape)));
  }

  private Measurement.Measured measured(long step) {
    return surfaces().measurements().values().stream()
        .filter(m -> m.id().step() == step)
        .map(Measurement.Measured.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private Surfaces surfaces() {
    Building building =
        new Building(
            "",
            Vec3.ZERO,
            List.of(),
            List.of(),
            members,
            List.of(),
            slabs,
            walls,
            bulks,
            List.of(),
            List.of(),
            openings,
            List.<Finding>of());
    return SurfaceTakeoff.measure(building, new SurfaceOptions(2), Progress.silent());
  }

  private static void close(double value, double want) {
    assertThat(value).isCloseTo(want, within(1e-9 * (1 + want)));
  }

  @Test
  void aBeamUnderAFlatSlabLosesOneFlange() {
    for (Transform3 t : List.of(Transform3.IDENTITY, turn(3), turn(4))) {
      members.clear();
      slabs.clear();
      turned = t;
      steel(1, Role.BEAM, beam(6));
      slab(2, block(-1, -3, 0, 8, 6, 0.15));
      Measurement.Measured m = measured(1);
      close(m.ledger().covered().squareMetres(), 6 * 0.2);
      close(m.ledger().exposed().squareMetres(), 6 * (CONTOUR - 0.2));
      close(m.section().orElseThrow().heated().metres(), CONTOUR - 0.2);
      close(m.section().orElseThrow().boxHeated().metres(), 0.2 + 2 * 0.4);
      assertThat(m.covers()).hasSize(1);
      assertThat(m.covers().get(0).kind()).isEqualTo(Cover.Kind.CONTACT);
    }
  }

  private static Transform3 turn(long seed) {
    Random r = new Random(seed);
    return Transform3.frame(
        new Vec3(10 * r.nextDouble(), 20 * r.nextDouble(), 5),
        new Vec3(r.nextDouble() - 0.5, r.nextDouble() - 0.5, r.nextDouble()),
        new Vec3(r.nextDouble(), r.nextDouble(), r.nextDouble() - 0.5));
  }

  @Test
  void underRibsAcrossItTheFlangeIsOpenBetweenThem() {
    steel(1, Role.BEAM, beam(6));
    for (int i = 0; i < 20; i++) {
      slab(10 + i, block(0.3 * i + 0.05, -3, 0, 0.12, 6, 0.075));
    }
    Measurement.Measured m = measured(1);
    close(m.ledger().covered().squareMetres(), 20 * 0.12 * 0.2);
    close(m.section().orElseThrow().heated().metres(), CONTOUR - 0.2 * 0.12 / 0.3);
  }

  @Test
  void aGapWithinTheLimitTouchesAndAWiderOneDoesNot() {
    steel(1, Role.BEAM, beam(6));
    slab(2, block(-1, -3, 0.004, 8, 6, 0.15));
    close(measured(1).ledger().covered().squareMetres(), 6 * 0.2);
    slabs.clear();
    slab(2, block(-1, -3, 0.006, 8, 6, 0.15));
    close(measured(1).ledger().covered().squareMetres(), 0);
  }

  @Test
  void aBeamRunningThroughConcreteLosesWhatStandsInIt() {
    steel(1, Role.BEAM, beam(6));
    bulks.add(
        new Bulk(
            Identity.of(2, "wall"),
            new Classification(Substance.CONCRETE, List.of()),
            Body.of(turned, block(2, -1, -1, 0.3, 2, 2))));
    Measurement.Measured m = measured(1);
    close(m.ledger().covered().squareMetres(), 0.3 * CONTOUR);
    assertThat(m.covers().get(0).kind()).isEqualTo(Cover.Kind.ENCASED);
  }

  /** A quarter of the column's depth stands in a wall, along 2 m of its 3 m. */
  @Test
  void aColumnInAConcreteWallLosesExactlyWhatStandsInIt() {
    for (Transform3 t : List.of(Transform3.IDENTITY, turn(5), turn(6))) {
      members.clear();
      walls.clear();
      turned = t;
      steel(1, Role.COLUMN, new Shape.Extrusion(I, Transform3.IDENTITY, Vec3.Z, 3));
      wall(block(-2, -0.5, 0.4, 4, 0.4, 2));
      Measurement.Measured m = measured(1);
      double inIt = 0.2 + 2 * 0.012 + (0.2 - 0.008) + 2 * (0.1 - 0.012);
      assertThat(m.ledger().covered().squareMetres()).isCloseTo(2 * inIt, within(1e-9));
      assertThat(m.ledger().exposed().squareMetres())
          .isCloseTo(3 * CONTOUR - 2 * inIt, within(1e-9));
      assertThat(m.covers()).extracting(Cover::kind).containsExactly(Cover.Kind.ENCASED);
    }
  }

  /**
   * Drawn to the axis of a tube of 300 x 300 x 10, as design models do: the last 150 mm stand in
   * its wall and its bore, where nobody coats. The tube loses the beam's section at its face.
   */
  @Test
  void aBeamDrawnIntoATubeLosesAllThatIsInIt() {
    Shape swept =
        new Shape.Extrusion(
            new Profile.RectangleHollow("", 0.3, 0.3, 0.01, SHARP, SHARP),
            Transform3.translation(new Vec3(0, 0, -2)),
            Vec3.Z,
            4);
    for (Shape tube : List.of(swept, squareTube(0.15, 0.14, -2, 2))) {
      for (Transform3 t : List.of(Transform3.IDENTITY, turn(7))) {
        members.clear();
        turned = t;
        steel(1, Role.BEAM, beam(6));
        steel(2, Role.COLUMN, tube);
        Measurement.Measured beam = measured(1);
        assertThat(beam.ledger().exposed().squareMetres()).isCloseTo(5.85 * CONTOUR, within(1e-9));
        assertThat(beam.covers()).extracting(Cover::kind).containsExactly(Cover.Kind.ENCASED);
        double section = 2 * 0.2 * 0.012 + (0.4 - 2 * 0.012) * 0.008;
        assertThat(measured(2).ledger().exposed().squareMetres())
            .isCloseTo(4 * 0.3 * 4 - section, within(1e-9));
      }
    }
  }

  /** Nobody coats the inside of a tube, whatever stands in it. */
  @Test
  void theInsideOfATubeIsInsideWhateverFillsIt() {
    steel(1, Role.COLUMN, squareTube(0.15, 0.14, 0, 3));
    bulks.add(
        new Bulk(
            Identity.of(2, "fill"),
            new Classification(Substance.CONCRETE, List.of()),
            Body.of(turned, block(-0.14, -0.14, 0, 0.28, 0.28, 3))));
    Measurement.Measured m = measured(1);
    close(m.ledger().inside().squareMetres(), 4 * 0.28 * 3);
    close(m.ledger().exposed().squareMetres(), 4 * 0.3 * 3);
    close(m.ledger().covered().squareMetres(), 0);
  }

  /** A shaft is no hollow section: what stands in it is coated. */
  @Test
  void whatStandsInAShaftIsExposed() {
    steel(1, Role.COLUMN, new Shape.Extrusion(I, Transform3.IDENTITY, Vec3.Z, 3));
    wall(
        new Shape.Extrusion(
            new Profile.RectangleHollow("", 4, 4, 0.3, SHARP, SHARP),
            Transform3.IDENTITY,
            Vec3.Z,
            3));
    close(measured(1).ledger().exposed().squareMetres(), 3 * CONTOUR);
  }

  @Test
  void twoPlatesBackToBackLoseBothFaces() {
    steel(1, Role.PLATE, block(0, 0, 0, 0.3, 0.2, 0.012));
    steel(2, Role.PLATE, block(0.1, 0, 0.012, 0.3, 0.2, 0.0007));
    close(measured(1).ledger().covered().squareMetres(), 0.2 * 0.2);
    close(measured(2).ledger().covered().squareMetres(), 0.2 * 0.2);
  }

  @Test
  void smallHolesLeaveTheCoatedAreaAlone() {
    steel(1, Role.PLATE, block(0, 0, 0, 0.3, 0.2, 0.012));
    double whole = measured(1).ledger().exposed().squareMetres();
    openings.add(
        new Opening(
            Identity.of(3, "hole"),
            members.get(0).id(),
            Opening.Fill.NOTHING,
            Body.of(turned, block(0.1, 0.1, -0.01, 0.02, 0.02, 0.05))));
    Measurement.Measured m = measured(1);
    close(m.ledger().exposed().squareMetres(), whole);
    close(m.ledger().holes().squareMetres(), 4 * 0.02 * 0.012 - 2 * 0.02 * 0.02);
  }

  @Test
  void anOpeningBesideItsHostChangesNothingAndIsReported() {
    steel(1, Role.PLATE, block(0, 0, 0, 0.3, 0.2, 0.012));
    double whole = measured(1).ledger().exposed().squareMetres();
    for (long i = 3; i < 5; i++) {
      openings.add(
          new Opening(
              Identity.of(i, "hole"),
              members.get(0).id(),
              Opening.Fill.NOTHING,
              Body.of(turned, block(i == 3 ? 0.4 : 0.05, 0.05, -0.01, 0.1, 0.1, 0.05))));
    }
    close(measured(1).ledger().exposed().squareMetres(), whole - 2 * 0.1 * 0.1 + 4 * 0.1 * 0.012);
    assertThat(surfaces().findings()).hasSize(1);
    assertThat(surfaces().findings().get(0).code()).isEqualTo(SurfaceFinding.IDLE_OPENING);
    assertThat(surfaces().findings().get(0).sentence()).contains("#3");
  }

  @Test
  void smallHolesDrawnInAProfileOrAMeshLeaveTheCoatedAreaAlone() {
    double r = 0.011;
    double t = 0.012;
    var round = new Segment2.Arc(Vec2.ZERO, new Vec2(r, 0), new Vec2(0, r), 0, 2 * Math.PI);
    Curve2 outer =
        Curve2.polyline(
            List.of(
                new Vec2(-0.15, -0.1),
                new Vec2(0.15, -0.1),
                new Vec2(0.15, 0.1),
                new Vec2(-0.15, 0.1)),
            true);
    steel(
        1,
        Role.PLATE,
        new Shape.Extrusion(
            new Profile.Outline("", outer, List.of(new Curve2(List.of(round), true))),
            Transform3.IDENTITY,
            Vec3.Z,
            t));
    steel(2, Role.PLATE, holedBox(0.02, t));
    double whole = 2 * (0.3 * 0.2 + (0.3 + 0.2) * t);
    Measurement.Measured drawn = measured(1);
    close(drawn.ledger().exposed().squareMetres(), whole);
    close(drawn.ledger().holes().squareMetres(), 2 * Math.PI * r * t - 2 * Math.PI * r * r);
    close(drawn.volume().cubicMetres(), (0.06 - Math.PI * r * r) * t);
    Measurement.Measured mesh = measured(2);
    close(mesh.ledger().exposed().squareMetres(), whole);
    close(mesh.ledger().holes().squareMetres(), 4 * 0.02 * t - 2 * 0.02 * 0.02);
  }

  @Test
  void theBoreOfASmallTubeIsNoHole() {
    members.clear();
    steel(1, Role.BEAM, holedBox(0.09, 2));
    Measurement.Measured m = measured(1);
    close(m.ledger().holes().squareMetres(), 0);
    close(m.ledger().inside().squareMetres(), 4 * 0.09 * 2);
  }

  /** A box far away, 300 x 200 mm about a square hole, or 100 mm square about a bore. */
  private static Shape holedBox(double hole, double height) {
    double a = hole > 0.05 ? 0.05 : 0.15;
    double b = hole > 0.05 ? 0.05 : 0.1;
    return meshed(50, a, b, hole / 2, 0, height);
  }

  /** The mesh of a square tube about the z axis. */
  private static Shape squareTube(double outside, double inside, double from, double to) {
    return meshed(0, outside, outside, inside, from, to);
  }

  private static Shape meshed(double x, double a, double b, double h, double from, double to) {
    double[][] plan = {{-a, -b}, {a, -b}, {a, b}, {-a, b}, {-h, -h}, {h, -h}, {h, h}, {-h, h}};
    var points = new ArrayList<Vec3>();
    for (int end = 0; end < 2; end++) {
      for (double[] p : plan) {
        points.add(new Vec3(p[0] + x, p[1], end == 0 ? from : to));
      }
    }
    var faces = new ArrayList<Shape.MeshFace>();
    faces.add(new Shape.MeshFace(new int[] {3, 2, 1, 0}, List.of(new int[] {4, 5, 6, 7})));
    faces.add(new Shape.MeshFace(new int[] {8, 9, 10, 11}, List.of(new int[] {15, 14, 13, 12})));
    for (int k = 0; k < 4; k++) {
      int n = (k + 1) % 4;
      faces.add(new Shape.MeshFace(new int[] {k, n, 8 + n, 8 + k}, List.of()));
      faces.add(new Shape.MeshFace(new int[] {4 + n, 4 + k, 12 + k, 12 + n}, List.of()));
    }
    return new Shape.Mesh(points, faces, true);
  }

  @Test
  void aHalfSpaceWithItsOriginOnTheEndFaceCutsAllTheSame() {
    Shape half =
        new Shape.HalfSpace(new Vec3(6, 0, 0), new Vec3(-1, 0, -1).unit(), Optional.empty());
    steel(1, Role.BEAM, new Shape.Combination(Shape.Operator.DIFFERENCE, beam(6), half));
    Measurement.Measured m = measured(1);
    // the plane rises at 45° from (6, 0, 0): nothing of the beam, which lies below z = 0 up to
    // x = 6, is on its filled side x + z > 6
    close(m.volume().cubicMetres(), 6 * (2 * 0.2 * 0.012 + 0.376 * 0.008));
    Shape other =
        new Shape.HalfSpace(new Vec3(6, 0, 0), new Vec3(-1, 0, 1).unit(), Optional.empty());
    members.clear();
    steel(1, Role.BEAM, new Shape.Combination(Shape.Operator.DIFFERENCE, beam(6), other));
    // mitred at 45° about the top: the mean length is shorter by half the depth
    close(measured(1).volume().cubicMetres(), 5.8 * (2 * 0.2 * 0.012 + 0.376 * 0.008));
  }
}
