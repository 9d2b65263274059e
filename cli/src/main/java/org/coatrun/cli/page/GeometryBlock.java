package org.coatrun.cli.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/**
 * Geometry as the page reads it: unique local meshes on 16-bit numbers at 0.5 mm (coarser for
 * meshes beyond 16 m), welded, then instances of them, all little-endian, deflated, base64.
 *
 * <p>Layout: {@code u32 meshes; each: u32 vertices, u32 triangles, f32 scale, i16 xyz, u16 corners,
 * u8 states, each padded to four bytes; u32 instances; each: u32 mesh, u32 element, f32 × 12 (x, y,
 * z axes and origin)}.
 */
final class GeometryBlock {

  private static final double STEP_M = 0.0005;
  private static final int MOST_VERTICES = 65_535;

  private final Map<ByteBuffer, Integer> meshes = new LinkedHashMap<>();
  private final List<byte[]> instances = new ArrayList<>();
  private int triangles;

  void add(PageMesh mesh) {
    if (mesh.points().length / 3 > MOST_VERTICES) {
      split(mesh).forEach(this::add);
      return;
    }
    triangles += mesh.states().length;
    int number = meshes.computeIfAbsent(ByteBuffer.wrap(local(mesh)), k -> meshes.size());
    instances.add(instance(number, mesh));
  }

  int uniqueMeshes() {
    return meshes.size();
  }

  int triangles() {
    return triangles;
  }

  /** The block as text. */
  String encoded() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
    try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, deflater)) {
      out.write(number(meshes.size()));
      for (ByteBuffer mesh : meshes.keySet()) {
        out.write(bytes(mesh.rewind()));
      }
      out.write(number(instances.size()));
      for (byte[] instance : instances) {
        out.write(instance);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory refused to be written to", e);
    } finally {
      deflater.end();
    }
    return Base64.getEncoder().encodeToString(bytes.toByteArray());
  }

  private static byte[] local(PageMesh mesh) {
    double[] xyz = inItsFrame(mesh);
    double most = DoubleStream.of(xyz).map(Math::abs).max().orElse(0);
    double scale = Math.max(STEP_M, most / Short.MAX_VALUE);
    WeldedMesh welded = WeldedMesh.of(mesh, xyz, scale);
    int triangles = welded.states().length;
    ByteBuffer out =
        little(
            12
                + padded(2 * welded.grid().length)
                + padded(2 * welded.corners().length)
                + padded(triangles));
    out.putInt(welded.grid().length / 3).putInt(triangles).putFloat((float) scale);
    for (short c : welded.grid()) {
      out.putShort(c);
    }
    pad(out);
    for (int corner : welded.corners()) {
      out.putShort((short) corner);
    }
    pad(out);
    out.put(welded.states());
    return bytes(out.rewind());
  }

  private static double[] inItsFrame(PageMesh mesh) {
    Transform3 back = mesh.frame().inverse();
    double[] xyz = new double[mesh.points().length];
    for (int v = 0; v < xyz.length / 3; v++) {
      Vec3 p = back.apply(point(mesh, v));
      xyz[3 * v] = p.x();
      xyz[3 * v + 1] = p.y();
      xyz[3 * v + 2] = p.z();
    }
    return xyz;
  }

  private static byte[] instance(int number, PageMesh mesh) {
    Transform3 f = mesh.frame();
    ByteBuffer out = little(56);
    out.putInt(number).putInt(mesh.element());
    for (Vec3 v : List.of(f.x(), f.y(), f.z(), f.origin())) {
      out.putFloat((float) v.x()).putFloat((float) v.y()).putFloat((float) v.z());
    }
    return bytes(out.rewind());
  }

  private static List<PageMesh> split(PageMesh mesh) {
    int each = MOST_VERTICES / 3;
    List<PageMesh> parts = new ArrayList<>();
    for (int from = 0; from < mesh.states().length; from += each) {
      int to = Math.min(mesh.states().length, from + each);
      double[] points = new double[9 * (to - from)];
      int[] corners = new int[3 * (to - from)];
      byte[] states = new byte[to - from];
      for (int c = 0; c < corners.length; c++) {
        System.arraycopy(mesh.points(), 3 * mesh.corners()[3 * from + c], points, 3 * c, 3);
        corners[c] = c;
      }
      System.arraycopy(mesh.states(), from, states, 0, states.length);
      parts.add(new PageMesh(mesh.element(), mesh.frame(), points, corners, states));
    }
    return parts;
  }

  private static Vec3 point(PageMesh mesh, int vertex) {
    double[] p = mesh.points();
    return new Vec3(p[3 * vertex], p[3 * vertex + 1], p[3 * vertex + 2]);
  }

  private static ByteBuffer little(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static byte[] bytes(ByteBuffer whole) {
    byte[] bytes = new byte[whole.remaining()];
    whole.get(bytes);
    return bytes;
  }

  private static byte[] number(int value) {
    return bytes(little(4).putInt(value).rewind());
  }

  private static int padded(int size) {
    return (size + 3) & ~3;
  }

  private static void pad(ByteBuffer out) {
    while (out.position() % 4 != 0) {
      out.put((byte) 0);
    }
  }
}
