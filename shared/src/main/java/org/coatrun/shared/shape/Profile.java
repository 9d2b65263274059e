package org.coatrun.shared.shape;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The outline of a section in its own plane, in metres and radians.
 *
 * <p>Parametric shapes are centred on their bounding box, their depth along y. A radius that is
 * absent is unknown, a radius of zero is a sharp corner. {@code name} is the section's designation
 * as the model gives it, or empty.
 */
public sealed interface Profile {

  /** The designation as the model gives it, or empty. */
  String name();

  /** A doubly symmetric I or H. Slope is that of the inner flange faces, from the horizontal. */
  record IShape(
      String name,
      double width,
      double depth,
      double web,
      double flange,
      OptionalDouble fillet,
      OptionalDouble edgeRadius,
      OptionalDouble slope)
      implements Profile {}

  /** One flange of an I with unlike flanges. */
  record Flange(
      double width,
      double thickness,
      OptionalDouble fillet,
      OptionalDouble edgeRadius,
      OptionalDouble slope) {}

  /** An I with unlike flanges; the top is at +y. Centred on the bounding box of the whole. */
  record AsymmetricI(String name, double depth, double web, Flange bottom, Flange top)
      implements Profile {}

  /** A channel; web at the left, flanges to +x. */
  record UShape(
      String name,
      double depth,
      double width,
      double web,
      double flange,
      OptionalDouble fillet,
      OptionalDouble edgeRadius,
      OptionalDouble slope)
      implements Profile {}

  /** An angle; heel at the lower left, legs along +x (width) and +y (depth). */
  record LShape(
      String name,
      double depth,
      double width,
      double thickness,
      OptionalDouble fillet,
      OptionalDouble edgeRadius,
      OptionalDouble slope)
      implements Profile {}

  /** A tee; flange at the top (+y), stem down. */
  record TShape(
      String name,
      double depth,
      double width,
      double web,
      double flange,
      OptionalDouble fillet,
      OptionalDouble flangeEdgeRadius,
      OptionalDouble webEdgeRadius,
      OptionalDouble webSlope,
      OptionalDouble flangeSlope)
      implements Profile {}

  /** A cold-formed C with lips; web at the left, flanges to +x. */
  record CShape(
      String name,
      double depth,
      double width,
      double wall,
      double girth,
      OptionalDouble insideRadius)
      implements Profile {}

  /** A Z; upper flange to +x, lower flange to -x. */
  record ZShape(
      String name,
      double depth,
      double flangeWidth,
      double web,
      double flange,
      OptionalDouble fillet,
      OptionalDouble edgeRadius)
      implements Profile {}

  /** A rectangular tube. */
  record RectangleHollow(
      String name,
      double width,
      double depth,
      double wall,
      OptionalDouble innerRadius,
      OptionalDouble outerRadius)
      implements Profile {}

  /** A round tube; radius is the outer one. */
  record CircleHollow(String name, double radius, double wall) implements Profile {}

  /** A solid round. */
  record Circle(String name, double radius) implements Profile {}

  /** A solid ellipse by its semi-axes along x and y. */
  record Ellipse(String name, double semiX, double semiY) implements Profile {}

  /** A solid rectangle; corner radius zero for a plain one. */
  record Rectangle(String name, double width, double depth, double cornerRadius)
      implements Profile {}

  /** A trapezium; bottom and top along x, the top's left end offset from the bottom's. */
  record Trapezium(String name, double bottomWidth, double topWidth, double depth, double topOffset)
      implements Profile {}

  /** Any closed outline with holes. */
  record Outline(String name, Curve2 outer, List<Curve2> holes) implements Profile {
    public Outline {
      holes = List.copyOf(holes);
    }
  }

  /** A strip of even thickness along its centre line: bent plate, sheet. */
  record CentreLine(String name, Curve2 path, double thickness) implements Profile {}

  /** Several profiles side by side that act as one: double angles. */
  record Composite(String name, List<Profile> parts) implements Profile {
    public Composite {
      parts = List.copyOf(parts);
    }
  }

  /** A profile moved, turned, mirrored or stretched in its plane. */
  record Placed(String name, Transform2 by, Profile of) implements Profile {}

  /** A profile that is not handled, by the name of its kind. */
  record Unsupported(String name, String kind) implements Profile {}
}
