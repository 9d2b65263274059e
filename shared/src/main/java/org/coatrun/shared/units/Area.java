package org.coatrun.shared.units;

/**
 * An area.
 *
 * @param squareMetres the value in square metres; finite
 */
public record Area(double squareMetres) implements Comparable<Area> {

  /** Nothing: zero square metres. */
  public static final Area ZERO = new Area(0);

  private static final double SQUARE_MILLIMETRES = 1e-6;
  private static final double SQUARE_FEET = 0.3048 * 0.3048;
  private static final double SQUARE_INCHES = 0.0254 * 0.0254;

  public Area {
    if (!Double.isFinite(squareMetres)) {
      throw new IllegalArgumentException("not a finite area: " + squareMetres);
    }
  }

  /** The area of {@code value} square metres. */
  public static Area ofSquareMetres(double value) {
    return new Area(value);
  }

  /** The area of {@code value} square millimetres. */
  public static Area ofSquareMillimetres(double value) {
    return new Area(value * SQUARE_MILLIMETRES);
  }

  /** The area of {@code value} square feet. */
  public static Area ofSquareFeet(double value) {
    return new Area(value * SQUARE_FEET);
  }

  /** The area of {@code value} square inches. */
  public static Area ofSquareInches(double value) {
    return new Area(value * SQUARE_INCHES);
  }

  /** This area in square millimetres. */
  public double squareMillimetres() {
    return squareMetres / SQUARE_MILLIMETRES;
  }

  /** This area in square feet. */
  public double squareFeet() {
    return squareMetres / SQUARE_FEET;
  }

  /** This area in square inches. */
  public double squareInches() {
    return squareMetres / SQUARE_INCHES;
  }

  /** The sum of both. */
  public Area plus(Area other) {
    return new Area(squareMetres + other.squareMetres);
  }

  /** This less the other; may be negative. */
  public Area minus(Area other) {
    return new Area(squareMetres - other.squareMetres);
  }

  /** This, {@code factor} times. */
  public Area times(double factor) {
    return new Area(squareMetres * factor);
  }

  /** The prism of this area by a height. */
  public Volume times(Length height) {
    return new Volume(squareMetres * height.metres());
  }

  @Override
  public int compareTo(Area other) {
    return Double.compare(squareMetres, other.squareMetres);
  }
}
