package org.coatrun.cli.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/**
 * Geometry as the page reads it: unique local meshes, then instances of them, as {@link
 * PackedNumbers}, deflated, base64.
 *
 * <p>Layout, mesh after mesh in each of the middle lists, which say nothing of how long they are:
 *
 * <ul>
 *   <li>how many meshes; of each how many facets, and metres a step (single)
 *   <li>of each facet twice its corners, and one more where it is covered
 *   <li>of each corner of each facet nought for a vertex that is new in its mesh, else how many are
 *       newer, and itself
 *   <li>of each vertex, which are as many as noughts before, x, y and z as signed steps from the
 *       vertex before it in its mesh, of the first from nought
 *   <li>how many axes; of each x, y and z (nine singles)
 *   <li>how many instances; of each the numbers of its mesh, its element and its axes, and where
 *       its origin is (three singles)
 * </ul>
 *
 * <p>Like numbers stand together and most are small, so that packing need not look for what comes
 * again: that takes half of the time, and no more room.
 */
final class GeometryBlock {

  private final Map<LocalMesh, Integer> meshes = new LinkedHashMap<>();
  private final Map<Transform3, Integer> axes = new LinkedHashMap<>();
  private final List<Instance> instances = new ArrayList<>();
  private int triangles;

  private record Instance(int mesh, int element, int axes, Vec3 origin) {}

  /** The body of an element with this number. */
  void add(int element, PageBody body) {
    Transform3 frame = body.frame();
    int turned = axes.computeIfAbsent(frame.about(Vec3.ZERO), k -> axes.size());
    for (LocalMesh mesh : body.meshes()) {
      triangles += mesh.triangles();
      int number = meshes.computeIfAbsent(mesh, k -> meshes.size());
      instances.add(new Instance(number, element, turned, frame.origin()));
    }
  }

  int uniqueMeshes() {
    return meshes.size();
  }

  int triangles() {
    return triangles;
  }

  /** The block in base64. */
  byte[] encoded() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    Deflater deflater = new Deflater(Deflater.BEST_SPEED, true);
    deflater.setStrategy(Deflater.HUFFMAN_ONLY);
    try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, deflater, 1 << 14)) {
      PackedNumbers numbers = new PackedNumbers(out);
      meshes(numbers);
      instances(numbers);
      numbers.flush();
    } catch (IOException e) {
      throw new UncheckedIOException("memory refused to be written to", e);
    } finally {
      deflater.end();
    }
    return Base64.getEncoder().encode(bytes.toByteArray());
  }

  private void meshes(PackedNumbers out) throws IOException {
    out.whole(meshes.size());
    for (LocalMesh mesh : meshes.keySet()) {
      out.whole(mesh.welded().sizes().length);
      out.single(mesh.scale());
    }
    for (LocalMesh mesh : meshes.keySet()) {
      facets(mesh.welded(), out);
    }
    for (LocalMesh mesh : meshes.keySet()) {
      corners(mesh.welded().corners(), out);
    }
    for (LocalMesh mesh : meshes.keySet()) {
      vertices(mesh.welded().grid(), out);
    }
  }

  private static void facets(WeldedMesh mesh, PackedNumbers out) throws IOException {
    for (int f = 0; f < mesh.sizes().length; f++) {
      out.whole(mesh.sizes()[f] << 1 | mesh.states()[f]);
    }
  }

  private static void corners(char[] corners, PackedNumbers out) throws IOException {
    int known = 0;
    for (char corner : corners) {
      out.whole(known - corner);
      known = Math.max(known, corner + 1);
    }
  }

  private static void vertices(short[] grid, PackedNumbers out) throws IOException {
    for (int i = 0; i < grid.length; i++) {
      out.signed(i < 3 ? grid[i] : grid[i] - grid[i - 3]);
    }
  }

  private void instances(PackedNumbers out) throws IOException {
    out.whole(axes.size());
    for (Transform3 turn : axes.keySet()) {
      vector(turn.x(), out);
      vector(turn.y(), out);
      vector(turn.z(), out);
    }
    out.whole(instances.size());
    for (Instance instance : instances) {
      out.whole(instance.mesh());
      out.whole(instance.element());
      out.whole(instance.axes());
      vector(instance.origin(), out);
    }
  }

  private static void vector(Vec3 v, PackedNumbers out) throws IOException {
    out.single(v.x());
    out.single(v.y());
    out.single(v.z());
  }
}
