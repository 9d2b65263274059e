package org.coatrun.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coatrun.geometry.view.Facets;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;

/** Facets on a grid of 1 m, worked out by hand. */
class WeldedMeshTest {

  /** Facets in the plane of x and y, by their corners; a dot before them: must be coated. */
  private static WeldedMesh welded(String... facets) {
    int[] sizes = Arrays.stream(facets).mapToInt(f -> f.split(", ").length).toArray();
    boolean[] coated = new boolean[sizes.length];
    for (int f = 0; f < sizes.length; f++) {
      coated[f] = facets[f].startsWith(".");
    }
    float[] points = new float[3 * Arrays.stream(sizes).sum()];
    int at = 0;
    for (String corner : String.join(", ", facets).replace(".(", "").split(", ")) {
      String[] xy = corner.replaceAll("[()]", "").split(" ");
      points[at] = Float.parseFloat(xy[0]);
      points[at + 1] = Float.parseFloat(xy[1]);
      at += 3;
    }
    return WeldedMesh.of(new Facets(points, sizes, coated), Vec3.ZERO, 1);
  }

  private static String corners(WeldedMesh mesh) {
    return new String(mesh.corners())
        .chars()
        .mapToObj(Integer::toString)
        .collect(Collectors.joining(" "));
  }

  private static String grid(WeldedMesh mesh) {
    Stream<String> points =
        Stream.iterate(0, i -> i < mesh.grid().length, i -> i + 3)
            .map(i -> mesh.grid()[i] + " " + mesh.grid()[i + 1]);
    return String.join(", ", points.toList());
  }

  @Test
  void cornersThatMeetAreOneVertexNumberedAsTheyComeUp() {
    WeldedMesh mesh = welded(".(0 0, 2 0, 2 2, 0 2)", ".(2 2, 2 0, 4.2 -1)");
    assertThat(corners(mesh)).isEqualTo("0 1 2 3 2 1 4");
    assertThat(grid(mesh)).isEqualTo("0 0, 2 0, 2 2, 0 2, 4 -1");
    assertThat(mesh.triangles()).isEqualTo(3);
  }

  @Test
  void coveredAndExposedFacetsShareVertices() {
    WeldedMesh mesh = welded(".(0 0, 2 0, 2 2)", "(0 0, 2 2, 0 2)");
    assertThat(corners(mesh)).isEqualTo("0 1 2 0 2 3");
    assertThat(mesh.states()).containsExactly(0, 1);
  }

  /** A sliver goes and leaves no vertex; a square of which two corners are one is a triangle. */
  @Test
  void whatTheGridMakesFlatIsDropped() {
    WeldedMesh mesh = welded(".(9 9, 9.3 9, 9 9.3)", ".(0 0, 2 0, 2.3 0.2, 0 2)");
    assertThat(mesh.sizes()).containsExactly(3);
    assertThat(corners(mesh)).isEqualTo("0 1 2");
    assertThat(grid(mesh)).isEqualTo("0 0, 2 0, 0 2");
  }

  /** A neck that the grid closes. */
  @Test
  void aFacetThatMeetsItselfBecomesTriangles() {
    WeldedMesh mesh = welded(".(0 0, 4 0, 2 2, 4 4, 0 4, 2 2.2)");
    assertThat(mesh.sizes()).containsExactly(3, 3, 3, 3);
    assertThat(corners(mesh)).isEqualTo("0 1 2 0 2 3 0 3 4 0 4 2");
  }

  @Test
  void aBodyFarFromItsFrameIsDrawnAsFinelyAsOneThatIsNear() {
    float[] near = {0, 0, 0, 1.0005F, 0, 0, 1.0005F, 1, 0, 0, 1, 0};
    float[] far = near.clone();
    for (int i = 0; i < far.length; i += 3) {
      far[i] += 40;
    }
    PageBody body =
        PageBody.of(Transform3.IDENTITY, new Facets(far, new int[] {4}, new boolean[] {true}));
    LocalMesh mesh = body.meshes().get(0);
    assertThat(mesh.scale()).isCloseTo(0.0005, offset(1e-9));
    short[] grid = mesh.welded().grid();
    for (int i = 0; i < near.length; i += 3) {
      double x = body.frame().origin().x() + grid[i] * mesh.scale();
      assertThat(x).isCloseTo(40 + near[i], offset(0.00026));
    }
  }

  /** 30,000 triangles that share nothing: 90,000 corners, more than sixteen bits can number. */
  @Test
  void aBodyOfVeryManyCornersIsSeveralMeshes() {
    int[] sizes = new int[30_000];
    Arrays.fill(sizes, 3);
    float[] points = new float[9 * sizes.length];
    for (int t = 0; t < sizes.length; t++) {
      int row = t / 200;
      float x = t % 200 * 0.01F;
      float y = row * 0.01F;
      float[] corners = {x, y, 0, x + 0.005F, y, 0, x, y + 0.005F, 0};
      System.arraycopy(corners, 0, points, 9 * t, 9);
    }
    PageBody body =
        PageBody.of(Transform3.IDENTITY, new Facets(points, sizes, new boolean[sizes.length]));
    assertThat(body.meshes()).hasSize(2);
    assertThat(body.meshes().get(0).triangles()).isEqualTo(21_845);
    assertThat(body.triangles()).isEqualTo(30_000);
  }
}
