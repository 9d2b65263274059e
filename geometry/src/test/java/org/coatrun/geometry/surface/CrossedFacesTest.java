package org.coatrun.geometry.surface;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coatrun.geometry.view.ElementMesh;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.Surfaces;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bodies whose faces cross themselves, as broken exports hold them, plane and bent. */
class CrossedFacesTest {

  /** A prism on corners taken in any order, with or without a hole in it; its top may bend. */
  private static Shape prism(Random random) {
    double bend = random.nextInt(3) * 0.05;
    List<Vec3> points = new ArrayList<>();
    for (int n = 4 + random.nextInt(8); n > 0; n--) {
      double grid = random.nextBoolean() ? 4 : 1e6;
      double x = Math.round(random.nextDouble() * grid) / grid;
      double y = Math.round(random.nextDouble() * grid) / grid;
      points.add(new Vec3(x, y, 0));
      points.add(new Vec3(x, y, 1 + bend * random.nextDouble()));
    }
    return prism(points, random.nextInt(3) == 0);
  }

  /**
   * @param points foot and head of each corner
   * @param pierced whether the top has its own outline for a hole
   */
  private static Shape prism(List<Vec3> points, boolean pierced) {
    int n = points.size() / 2;
    List<Shape.MeshFace> faces = new ArrayList<>();
    int[] foot = new int[n];
    int[] head = new int[n];
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      faces.add(new Shape.MeshFace(new int[] {2 * i, 2 * j, 2 * j + 1, 2 * i + 1}, List.of()));
      foot[n - 1 - i] = 2 * i;
      head[i] = 2 * i + 1;
    }
    faces.add(new Shape.MeshFace(foot, List.of()));
    faces.add(new Shape.MeshFace(head, pierced ? List.of(foot) : List.of()));
    return new Shape.Mesh(points, faces, true);
  }

  private static Building building(Shape shape) {
    Member member =
        new Member(
            Identity.of(1, "crossed"),
            Role.BEAM,
            SectionName.NONE,
            new Classification(Substance.STEEL, List.of()),
            List.of(),
            Properties.none(),
            Body.of(Transform3.IDENTITY, shape));
    Body top =
        Body.of(
            Transform3.translation(new Vec3(0.5, 0.5, 1)),
            new Shape.Block(Transform3.IDENTITY, 5, 5, 0.2));
    Slab slab =
        new Slab(Identity.of(2, "slab"), Slab.Kind.FLOOR, List.of(), Properties.none(), top);
    return new Building(
        "",
        Vec3.ZERO,
        List.of(),
        List.of(),
        List.of(member),
        List.of(),
        List.of(slab),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 100, 200, 300})
  void areMeasuredAndDrawnOrNamed(int first) {
    int measured = 0;
    for (int seed = first; seed < first + 100; seed++) {
      List<ElementMesh> drawn = new ArrayList<>();
      Surfaces surfaces =
          SurfaceTakeoff.measure(
              building(prism(new Random(seed))),
              new SurfaceOptions(1).withMeshes(drawn::add),
              Progress.silent());
      Measurement m = surfaces.measurements().values().iterator().next();
      if (m instanceof Measurement.Measured ok) {
        measured++;
        assertThat(ok.ledger().body().squareMetres()).describedAs("seed " + seed).isPositive();
        assertThat(ok.ledger().exposed().squareMetres())
            .describedAs("seed " + seed)
            .isBetween(0.0, ok.ledger().body().squareMetres() * (1 + 1e-9));
        assertThat(drawn).hasSize(2);
      } else {
        assertThat(((Measurement.Unresolved) m).sentence()).isNotBlank();
      }
    }
    assertThat(measured).isGreaterThan(50);
  }

  /** A sound outline, one that crosses itself, and one that touches itself in a corner. */
  @ParameterizedTest
  @CsvSource({"0 0 2 0 2 2 1 1, 0", "0 0 2 2 2 0 0 1, 1", "0 0 2 0 2 2 0 0 0 2, 0"})
  void aCrossingIsSaidAndATouchIsNot(String corners, int said) {
    String[] numbers = corners.split(" ");
    List<Vec3> points = new ArrayList<>();
    for (int i = 0; i < numbers.length; i += 2) {
      double x = Double.parseDouble(numbers[i]);
      double y = Double.parseDouble(numbers[i + 1]);
      points.add(new Vec3(x, y, 0));
      points.add(new Vec3(x, y, 1));
    }
    Surfaces surfaces =
        SurfaceTakeoff.measure(
            building(prism(points, false)), new SurfaceOptions(1), Progress.silent());
    assertThat(surfaces.findings())
        .filteredOn(f -> f.code() == SurfaceFinding.CROSSED_OUTLINE)
        .hasSize(said);
  }
}
