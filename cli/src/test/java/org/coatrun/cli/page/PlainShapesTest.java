package org.coatrun.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.coatrun.geometry.view.Facets;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;

class PlainShapesTest {

  private static final Transform3 HERE = Transform3.translation(new Vec3(3, 4, 5));

  @Test
  void whatFitsStaysAsItIs() {
    List<PageBody> bodies = List.of(fan(50, 1), fan(60, 2));
    PlainShapes shapes = new PlainShapes(bodies, 110);
    assertThat(bodies).noneMatch(shapes::isPlain);
    assertThat(bodies).allSatisfy(b -> assertThat(shapes.drawn(b)).isSameAs(b));
  }

  @Test
  void theMostTrianglesForTheirSizeGoFirstAndLikeOnesTogether() {
    PageBody small = fan(50, 1);
    PageBody large = fan(50, 20);
    List<PageBody> bodies = List.of(small, large, fan(50, 1));
    PlainShapes shapes = new PlainShapes(bodies, 50 + 2 * 12 + 40);
    assertThat(shapes.isPlain(large)).isFalse();
    assertThat(bodies).filteredOn(shapes::isPlain).hasSize(2);
    // The box around what is flat has two sides that show.
    assertThat(shapes.drawn(small).triangles()).isEqualTo(4);
  }

  @Test
  void aPlainBoxHasTheExtentOfTheBody() {
    PageBody body = fan(40, 3);
    PlainShapes shapes = new PlainShapes(List.of(body), 0);
    LocalMesh box = shapes.drawn(body).meshes().get(0);
    assertThat(box.boxArea()).isEqualTo(body.meshes().get(0).boxArea()).isPositive();
    assertThat(box.box()).isEqualTo(box);
  }

  /** 10 m long and 0.2 m thick, slanting in space: its box by hand, along itself. */
  @Test
  void aSlantingBarStaysABar() {
    Vec3 along = new Vec3(2, 1, 2).times(1 / 3.0);
    Vec3 up = new Vec3(-1, -2, 2).times(1 / 3.0);
    Vec3 aside = along.cross(up);
    double[] points = new double[3 * 2 * 40];
    for (int i = 0; i < 80; i++) {
      double angle = Math.PI * i / 20;
      Vec3 p =
          along
              .times(i < 40 ? 0 : 10)
              .plus(up.times(0.1 * Math.cos(angle)))
              .plus(aside.times(0.1 * Math.sin(angle)));
      points[3 * i] = p.x();
      points[3 * i + 1] = p.y();
      points[3 * i + 2] = p.z();
    }
    double[] box = PlainBox.around(points);
    for (int v = 0; v < 8; v++) {
      Vec3 corner = new Vec3(box[3 * v], box[3 * v + 1], box[3 * v + 2]);
      double at = corner.dot(along);
      assertThat(Math.min(Math.abs(at), Math.abs(at - 10))).isLessThan(0.001);
      assertThat(corner.minus(along.times(at)).length()).isBetween(0.1, 0.1415);
    }
  }

  /** A flat half disc of so many triangles. */
  private static PageBody fan(int triangles, double radius) {
    float[] points = new float[9 * triangles];
    int[] sizes = new int[triangles];
    boolean[] exposed = new boolean[triangles];
    for (int t = 0; t < triangles; t++) {
      corner(points, 3 * t + 1, radius, Math.PI * t / triangles);
      corner(points, 3 * t + 2, radius, Math.PI * (t + 1) / triangles);
      sizes[t] = 3;
      exposed[t] = true;
    }
    return PageBody.of(HERE, new Facets(points, sizes, exposed));
  }

  private static void corner(float[] points, int corner, double radius, double angle) {
    points[3 * corner] = (float) (radius * Math.cos(angle));
    points[3 * corner + 1] = (float) (radius * Math.sin(angle));
  }
}
