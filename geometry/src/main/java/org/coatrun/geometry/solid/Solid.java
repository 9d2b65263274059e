package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.geom.Polygon;

/**
 * A set of plane faces on one table of shared vertices, in metres. Immutable; made by {@link
 * SolidBuilder}, which checks it.
 *
 * <p>A closed solid has an inside: each edge is used once each way, and the normals point out.
 */
public final class Solid {

  /** With more faces, slices are cheaper. */
  private static final int MOST_CONVEX = 24;

  /** A corner farther beyond a face than this makes a dent, m. */
  private static final double NOT_CONVEX = 1e-8;

  final double[] xyz;
  final Face[] faces;
  private final boolean closed;
  private final Box bounds;
  private final double volume;
  private final double area;

  /** Null until it was asked. */
  private volatile Boolean convex;

  Solid(double[] xyz, Face[] faces, boolean closed, Box bounds, double volume) {
    this.xyz = xyz;
    this.faces = faces;
    this.closed = closed;
    this.bounds = bounds;
    this.volume = volume;
    double sum = 0;
    for (Face f : faces) {
      sum += f.area();
    }
    this.area = sum;
  }

  /** Whether the faces enclose an inside. Of an open solid only areas mean anything. */
  public boolean closed() {
    return closed;
  }

  /** Whether it is closed and, with few faces, has no corner beyond the plane of any of them. */
  boolean isConvex() {
    Boolean known = convex;
    if (known == null) {
      known = closed && faces.length <= MOST_CONVEX && noneBeyond();
      convex = known;
    }
    return known;
  }

  private boolean noneBeyond() {
    for (Face f : faces) {
      for (int i = 0; i < xyz.length; i += 3) {
        if (f.plane().height(xyz[i], xyz[i + 1], xyz[i + 2]) > NOT_CONVEX) {
          return false;
        }
      }
    }
    return true;
  }

  /** The box about all faces. */
  public Box bounds() {
    return bounds;
  }

  /** Volume that the flat faces enclose, m³; of an open solid meaningless. */
  public double volume() {
    return volume;
  }

  /** Area of all faces, curved strips at their true area, m². */
  public double area() {
    return area;
  }

  public List<Face> faces() {
    return List.of(faces);
  }

  public int vertexCount() {
    return xyz.length / 3;
  }

  public double x(int vertex) {
    return xyz[3 * vertex];
  }

  public double y(int vertex) {
    return xyz[3 * vertex + 1];
  }

  public double z(int vertex) {
    return xyz[3 * vertex + 2];
  }

  /**
   * The same solid mapped: moved, turned, mirrored or stretched. Areas and planes are measured
   * anew; the stretch of curved strips stays.
   *
   * @throws IllegalArgumentException where the map flattens it
   */
  public Solid mapped(Transform3 by) {
    double[] to = new double[xyz.length];
    for (int v = 0; v < vertexCount(); v++) {
      Vec3 p = by.apply(new Vec3(x(v), y(v), z(v)));
      to[3 * v] = p.x();
      to[3 * v + 1] = p.y();
      to[3 * v + 2] = p.z();
    }
    boolean mirrored = by.determinant() < 0;
    List<Face> out = new ArrayList<>();
    for (Face f : faces) {
      Face source = mirrored ? Solids.turned(f) : f;
      Face image = Solids.face(to, source.loops, f.label(), f.stretch());
      if (image != null) {
        out.add(image);
      }
    }
    if (out.isEmpty()) {
      throw new IllegalArgumentException("a map that flattens the solid");
    }
    return Solids.finish(to, out.toArray(new Face[0]));
  }

  /**
   * The solid with what some of its faces bound filled: they go, and with them the holes that they
   * leave in others.
   *
   * @return this one where the rest would not be closed
   */
  public Solid filled(Set<Face> inner) {
    BitSet gone = new BitSet();
    for (Face f : inner) {
      for (int[] ring : f.loops) {
        Arrays.stream(ring).forEach(gone::set);
      }
    }
    List<Face> out = new ArrayList<>();
    for (Face f : faces) {
      if (!inner.contains(f)) {
        out.add(withoutHoles(f, gone));
      }
    }
    Solid filled = Solids.finish(xyz, out.toArray(new Face[0]));
    return filled.closed() ? filled : this;
  }

  private Face withoutHoles(Face f, BitSet at) {
    List<int[]> kept = new ArrayList<>();
    for (int[] ring : f.loops) {
      if (kept.isEmpty() || !Arrays.stream(ring).allMatch(at::get)) {
        kept.add(ring);
      }
    }
    return kept.size() == f.loops.length
        ? f
        : Solids.face(xyz, kept.toArray(new int[0][]), f.label(), f.stretch());
  }

  /** A face's polygon in the axes of its own plane. */
  public Polygon polygon(Face face) {
    return Rings.ofFace(this, face, face.plane());
  }
}
