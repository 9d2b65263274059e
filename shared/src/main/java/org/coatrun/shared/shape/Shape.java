package org.coatrun.shared.shape;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a body looks like, in metres and radians.
 *
 * <p>A profile lies in the xy plane of its {@code position}; that is where a sweep starts.
 */
public sealed interface Shape {

  /**
   * A profile carried straight.
   *
   * @param direction unit vector in the frame of {@code position}
   */
  record Extrusion(Profile profile, Transform3 position, Vec3 direction, double depth)
      implements Shape {}

  /** A profile that changes evenly into another one on a straight way. */
  record TaperedExtrusion(
      Profile start, Profile end, Transform3 position, Vec3 direction, double depth)
      implements Shape {}

  /**
   * A profile carried round an axis that lies in its plane.
   *
   * @param axisPoint in the frame of {@code position}
   * @param axisDirection unit vector in the frame of {@code position}
   * @param angle radians, right-handed about the axis
   */
  record Revolution(
      Profile profile, Transform3 position, Vec3 axisPoint, Vec3 axisDirection, double angle)
      implements Shape {}

  /** A profile that changes evenly into another one on its way round an axis. */
  record TaperedRevolution(
      Profile start,
      Profile end,
      Transform3 position,
      Vec3 axisPoint,
      Vec3 axisDirection,
      double angle)
      implements Shape {}

  /**
   * A disc or ring carried along a curve.
   *
   * @param filletRadius rounding at the corners of a polyline, where given
   */
  record SweptDisk(
      Curve3 directrix, double radius, OptionalDouble innerRadius, OptionalDouble filletRadius)
      implements Shape {}

  /** Which way the profile's x axis looks while it is carried along. */
  sealed interface Guide {

    /** The x axis stays in the plane of the tangent and this direction. */
    record FixedReference(Vec3 direction) implements Guide {}

    /** The x axis follows the normal of a surface that the curve lies on. */
    record OnSurface(Surface surface) implements Guide {}
  }

  /** A profile carried along a curve, square to it. */
  record Sweep(Profile profile, Transform3 position, Curve3 directrix, Guide guide)
      implements Shape {}

  /** A profile standing somewhere in space. */
  record Station(Profile profile, Transform3 position) {}

  /** Profiles joined one to the next. */
  record Sectioned(List<Station> stations) implements Shape {
    public Sectioned {
      stations = List.copyOf(stations);
    }
  }

  /**
   * A plane face of a mesh: rings of vertex numbers, counter-clockwise from outside, holes the
   * other way round.
   */
  record MeshFace(int[] outer, List<int[]> holes) {
    public MeshFace {
      holes = List.copyOf(holes);
    }

    @Override
    public boolean equals(Object o) {
      return o instanceof MeshFace f
          && Arrays.equals(outer, f.outer)
          && Arrays.deepEquals(holes.toArray(), f.holes.toArray());
    }

    @Override
    public int hashCode() {
      return 31 * Arrays.hashCode(outer) + Arrays.deepHashCode(holes.toArray());
    }
  }

  /**
   * Plane faces on shared points.
   *
   * @param closed whether the model says that the faces enclose a solid
   */
  record Mesh(List<Vec3> points, List<MeshFace> faces, boolean closed) implements Shape {
    public Mesh {
      points = List.copyOf(points);
      faces = List.copyOf(faces);
    }
  }

  /**
   * A face of an exact brep.
   *
   * @param sameSense whether the face's outside is the surface's
   * @param bounds closed loops in space, the outer one first
   */
  record BrepFace(Surface surface, boolean sameSense, List<Curve3> bounds) {
    public BrepFace {
      bounds = List.copyOf(bounds);
    }
  }

  /** A solid bounded by curved faces. */
  record Brep(List<BrepFace> faces) implements Shape {
    public Brep {
      faces = List.copyOf(faces);
    }
  }

  /** Outline that bounds a half-space across, not along: an endless prism along z of its frame. */
  record Bound(Transform3 position, Curve2 outline) {}

  /**
   * All space on one side of a plane.
   *
   * @param outward unit normal, pointing out of the filled side
   */
  record HalfSpace(Vec3 point, Vec3 outward, Optional<Bound> bound) implements Shape {}

  /** A box with one corner at the origin of its frame. */
  record Block(Transform3 position, double x, double y, double z) implements Shape {}

  /** A pyramid on a rectangle with one corner at the origin of its frame. */
  record Pyramid(Transform3 position, double x, double y, double height) implements Shape {}

  /** A cone standing on the xy plane of its frame. */
  record Cone(Transform3 position, double radius, double height) implements Shape {}

  /** A cylinder standing on the xy plane of its frame. */
  record Cylinder(Transform3 position, double radius, double height) implements Shape {}

  /** A ball about the origin of its frame. */
  record Sphere(Transform3 position, double radius) implements Shape {}

  /** How two shapes make one. */
  enum Operator {
    UNION,
    INTERSECTION,
    DIFFERENCE
  }

  /** Two shapes that make one. */
  record Combination(Operator operator, Shape first, Shape second) implements Shape {}

  /** A shape moved, turned, mirrored or stretched: one use of a shared one. */
  record Placed(Transform3 by, Shape of) implements Shape {}

  /** Several shapes that belong to one body. */
  record Compound(List<Shape> items) implements Shape {
    public Compound {
      items = List.copyOf(items);
    }
  }

  /** A shape that is not handled, by the name of its kind. */
  record Unsupported(String kind, String detail) implements Shape {}

  /** A shape without an end, or beyond the limits of what is read; why, without a full stop. */
  record Endless(String detail) implements Shape {}
}
