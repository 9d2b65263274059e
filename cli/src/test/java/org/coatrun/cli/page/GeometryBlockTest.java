package org.coatrun.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import org.coatrun.geometry.view.Facets;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;

/** What the block's layout says, read back, is what was put in. */
class GeometryBlockTest {

  private final Random random = new Random(11);
  private ByteBuffer bytes;

  @Test
  void holdsEachMeshOnceAndEachInstance() throws IOException {
    List<PageBody> bodies = new ArrayList<>();
    GeometryBlock block = new GeometryBlock();
    for (int i = 0; i < 40; i++) {
      Facets facets = i % 4 == 3 ? facets(new Random(3)) : facets(random);
      bodies.add(PageBody.of(frame(), facets));
      block.add(7 * i, bodies.get(i));
    }
    byte[] packed = Base64.getDecoder().decode(block.encoded());
    bytes =
        ByteBuffer.wrap(
                new InflaterInputStream(new ByteArrayInputStream(packed), new Inflater(true))
                    .readAllBytes())
            .order(ByteOrder.LITTLE_ENDIAN);

    List<WeldedMesh> meshes = meshes();

    assertThat(meshes).hasSize(31);
    int triangles = 0;
    List<float[]> axes = new ArrayList<>();
    for (int n = whole(); n > 0; n--) {
      axes.add(singles(9));
    }
    assertThat(whole()).isEqualTo(40);
    for (int i = 0; i < 40; i++) {
      PageBody body = bodies.get(i);
      WeldedMesh mesh = meshes.get(whole());
      assertThat(mesh).isEqualTo(body.meshes().get(0).welded());
      assertThat(whole()).isEqualTo(7 * i);
      Transform3 frame = body.frame();
      assertThat(axes.get(whole())).containsExactly(singles(frame.x(), frame.y(), frame.z()));
      assertThat(singles(3)).containsExactly(singles(frame.origin()));
      triangles += mesh.triangles();
    }
    assertThat(bytes.remaining()).isZero();
    assertThat(block.triangles()).isEqualTo(triangles);
  }

  private Transform3 frame() {
    Vec3 origin =
        new Vec3(random.nextGaussian(), random.nextGaussian(), 1000 * random.nextGaussian());
    return Transform3.frame(origin, random.nextBoolean() ? Vec3.Z : Vec3.X, Vec3.Y);
  }

  /** Facets from next to nothing to some 30 m, some of which share corners. */
  private static Facets facets(Random random) {
    int[] sizes = new int[30];
    boolean[] coated = new boolean[sizes.length];
    int corners = 0;
    for (int f = 0; f < sizes.length; f++) {
      sizes[f] = 3 + random.nextInt(5);
      coated[f] = random.nextBoolean();
      corners += sizes[f];
    }
    float[] points = new float[3 * corners];
    for (int i = 0; i < points.length; i++) {
      points[i] = (float) (Math.pow(10, random.nextInt(4) - 2) * random.nextInt(4));
    }
    return new Facets(points, sizes, coated);
  }

  private List<WeldedMesh> meshes() {
    int count = whole();
    List<int[]> sizes = new ArrayList<>();
    for (int m = 0; m < count; m++) {
      sizes.add(new int[whole()]);
      singles(1);
    }
    List<byte[]> states = new ArrayList<>();
    for (int[] of : sizes) {
      byte[] state = new byte[of.length];
      for (int f = 0; f < of.length; f++) {
        int both = whole();
        of[f] = both / 2;
        state[f] = (byte) (both % 2);
      }
      states.add(state);
    }
    List<char[]> corners = new ArrayList<>();
    List<short[]> grids = new ArrayList<>();
    for (int[] of : sizes) {
      int vertices = 0;
      StringBuilder all = new StringBuilder();
      for (int size : of) {
        for (int c = 0; c < size; c++) {
          int back = whole();
          all.append((char) (vertices - back));
          vertices += back == 0 ? 1 : 0;
        }
      }
      corners.add(all.toString().toCharArray());
      grids.add(new short[3 * vertices]);
    }
    List<WeldedMesh> meshes = new ArrayList<>();
    for (int m = 0; m < count; m++) {
      short[] grid = grids.get(m);
      for (int i = 0; i < grid.length; i++) {
        int both = whole();
        int step = both % 2 == 0 ? both / 2 : -(both + 1) / 2;
        grid[i] = (short) (step + (i < 3 ? 0 : grid[i - 3]));
      }
      meshes.add(new WeldedMesh(grid, corners.get(m), sizes.get(m), states.get(m)));
    }
    return meshes;
  }

  private int whole() {
    int number = 0;
    for (int shift = 0; ; shift += 7) {
      int next = bytes.get();
      number |= (next & 0x7F) << shift;
      if (next >= 0) {
        return number;
      }
    }
  }

  private static float[] singles(Vec3... vectors) {
    float[] all = new float[3 * vectors.length];
    for (int i = 0; i < vectors.length; i++) {
      all[3 * i] = (float) vectors[i].x();
      all[3 * i + 1] = (float) vectors[i].y();
      all[3 * i + 2] = (float) vectors[i].z();
    }
    return all;
  }

  private float[] singles(int count) {
    float[] all = new float[count];
    for (int i = 0; i < count; i++) {
      all[i] = bytes.getFloat();
    }
    return all;
  }
}
