package org.coatrun.geometry.solid;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateFilter;
import org.locationtech.jts.geom.Geometry;

/**
 * A part of a body's surface: a face of an original, or what cuts left of it. Its normal points out
 * of the body. Immutable.
 */
public final class Patch {

  private final Solid solid;
  private final Face face;
  private final Plane plane;
  private final int leaf;
  private final boolean turned;
  private final double flatArea;
  private final Box bounds;

  /**
   * The patch that this one is when moved, and by what; null for one that stands as it was made.
   */
  private final Patch unmoved;

  private final Vec3 by;
  private volatile Geometry region;

  private Patch(
      Solid solid,
      Face face,
      Plane plane,
      int leaf,
      boolean turned,
      double flatArea,
      Box bounds,
      Geometry region) {
    this.solid = solid;
    this.face = face;
    this.plane = plane;
    this.leaf = leaf;
    this.turned = turned;
    this.flatArea = flatArea;
    this.bounds = bounds;
    this.unmoved = null;
    this.by = Vec3.ZERO;
    this.region = region;
  }

  private Patch(Patch unmoved, Vec3 by) {
    this.solid = unmoved.solid;
    this.face = unmoved.face;
    this.plane = unmoved.plane.moved(by);
    this.leaf = unmoved.leaf;
    this.turned = unmoved.turned;
    this.flatArea = unmoved.flatArea;
    this.bounds = unmoved.bounds.moved(by);
    this.unmoved = unmoved;
    this.by = by;
  }

  /** A face that no cut touches. */
  static Patch whole(Solid solid, Face face, int leaf) {
    return new Patch(solid, face, face.plane(), leaf, false, face.flatArea(), face.bounds(), null);
  }

  /** A part of a face, the region in the face's own axes. */
  static Patch part(Solid solid, Face face, int leaf, Geometry region) {
    Plane plane = face.plane();
    return new Patch(solid, face, plane, leaf, false, region.getArea(), box(plane, region), region);
  }

  /** A part of a face with the body on its other side, the region in the face's own axes. */
  static Patch turned(Solid solid, Face face, int leaf, Geometry region) {
    Geometry mirrored = region.copy();
    // the frame of a reversed plane keeps u and turns v round
    mirrored.apply((CoordinateFilter) c -> c.y = -c.y);
    mirrored.geometryChanged();
    Plane plane = face.plane().reversed();
    return new Patch(
        solid, face, plane, leaf, true, region.getArea(), box(plane, mirrored), mirrored);
  }

  /** The same patch somewhere else. */
  public Patch moved(Vec3 further) {
    return unmoved == null ? new Patch(this, further) : new Patch(unmoved, by.plus(further));
  }

  /** Its plane; the normal points out of the body. */
  public Plane plane() {
    return plane;
  }

  /** The region in the axes of {@link #plane()}. */
  public Geometry region() {
    Geometry known = region;
    if (known == null) {
      known =
          unmoved == null
              ? Rings.ofFace(solid, face, plane)
              : Rings.moved(unmoved.region(), plane, by);
      region = known;
    }
    return known;
  }

  /**
   * The rings about the region, of u and v in turn, the first corner not repeated: outlines
   * counter-clockwise, holes clockwise.
   */
  public List<double[]> rings() {
    return region == null && unmoved == null
        ? Rings.ringsOfFace(solid, face, plane)
        : Rings.of(region());
  }

  /** The region as convex rings side by side. */
  public List<double[]> convexParts() {
    Optional<double[]> ring = convexRing();
    return ring.isPresent() ? List.of(ring.get()) : ConvexParts.of(region());
  }

  /** The region as one convex ring of few corners, where it is one. */
  Optional<double[]> convexRing() {
    List<double[]> rings = rings();
    return rings.size() == 1 && ConvexClip.isRing(rings.get(0))
        ? Optional.of(rings.get(0))
        : Optional.empty();
  }

  /** Whether it is a whole face of an original. */
  public boolean isWhole() {
    return solid != null && !turned && flatArea == face.flatArea();
  }

  /** What the face is; a face of a cutter is a cut. */
  public FaceLabel label() {
    return turned ? FaceLabel.CUT : face.label();
  }

  /** Number of the original that the face comes from, in the order of the tree. */
  public int leaf() {
    return leaf;
  }

  /** The face that it comes from. */
  public Face face() {
    return face;
  }

  public double stretch() {
    return face.stretch();
  }

  /** Area of the flat region, m². */
  public double flatArea() {
    return flatArea;
  }

  /** Area of the surface that the region stands for, m². */
  public double area() {
    return flatArea * face.stretch();
  }

  public Box bounds() {
    return bounds;
  }

  private static Box box(Plane p, Geometry region) {
    double[] b = {1e300, 1e300, 1e300, -1e300, -1e300, -1e300};
    for (Coordinate c : region.getCoordinates()) {
      double x = p.x(c.x, c.y);
      double y = p.y(c.x, c.y);
      double z = p.z(c.x, c.y);
      b[0] = Math.min(b[0], x);
      b[1] = Math.min(b[1], y);
      b[2] = Math.min(b[2], z);
      b[3] = Math.max(b[3], x);
      b[4] = Math.max(b[4], y);
      b[5] = Math.max(b[5], z);
    }
    return new Box(b[0], b[1], b[2], b[3], b[4], b[5]);
  }

  /**
   * The region seen in the axes of another plane, along that plane's normal: what it shades there.
   */
  public Geometry onto(Plane other) {
    Geometry known = region();
    if (other == plane) {
      return known;
    }
    Geometry copy = known.copy();
    Plane p = plane;
    copy.apply(
        (CoordinateFilter)
            c -> {
              double x = p.x(c.x, c.y);
              double y = p.y(c.x, c.y);
              double z = p.z(c.x, c.y);
              c.x = other.u(x, y, z);
              c.y = other.v(x, y, z);
            });
    copy.geometryChanged();
    return copy;
  }

  /** x, y, z in turn of the corners of the region's rings. */
  public double[] corners() {
    if (unmoved != null) {
      return movedCorners();
    }
    Geometry known = region;
    if (known == null) {
      return wholeCorners();
    }
    Coordinate[] c = known.getCoordinates();
    double[] out = new double[3 * c.length];
    for (int i = 0; i < c.length; i++) {
      out[3 * i] = plane.x(c[i].x, c[i].y);
      out[3 * i + 1] = plane.y(c[i].x, c[i].y);
      out[3 * i + 2] = plane.z(c[i].x, c[i].y);
    }
    return out;
  }

  private double[] movedCorners() {
    double[] out = unmoved.corners();
    for (int i = 0; i < out.length; i += 3) {
      out[i] += by.x();
      out[i + 1] += by.y();
      out[i + 2] += by.z();
    }
    return out;
  }

  private double[] wholeCorners() {
    int[] ring = face.loops[0];
    double[] out = new double[3 * ring.length];
    for (int i = 0; i < ring.length; i++) {
      out[3 * i] = solid.x(ring[i]);
      out[3 * i + 1] = solid.y(ring[i]);
      out[3 * i + 2] = solid.z(ring[i]);
    }
    return out;
  }

  /** The shortest side of the face's outer ring, in metres: of a strip of an arc its chord. */
  public double narrow() {
    int[] ring = face.loops[0];
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ring.length; i++) {
      int j = ring[(i + 1) % ring.length];
      double dx = solid.x(j) - solid.x(ring[i]);
      double dy = solid.y(j) - solid.y(ring[i]);
      double dz = solid.z(j) - solid.z(ring[i]);
      least = Math.min(least, dx * dx + dy * dy + dz * dz);
    }
    return Math.sqrt(least);
  }
}
