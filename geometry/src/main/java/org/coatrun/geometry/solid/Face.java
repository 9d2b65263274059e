package org.coatrun.geometry.solid;

/**
 * A plane face of a solid: rings of vertex numbers, the outer one first and counter-clockwise seen
 * from outside, holes the other way round. Immutable.
 */
public final class Face {

  final int[][] loops;
  private final Plane plane;
  private final FaceLabel label;
  private final double stretch;
  private final double flatArea;
  private final Box bounds;

  Face(int[][] loops, Plane plane, FaceLabel label, double stretch, double flatArea, Box bounds) {
    this.loops = loops;
    this.plane = plane;
    this.label = label;
    this.stretch = stretch;
    this.flatArea = flatArea;
    this.bounds = bounds;
  }

  /** Number of rings. */
  public int loopCount() {
    return loops.length;
  }

  /** A copy of ring {@code i}: vertex numbers of the solid. */
  public int[] loop(int i) {
    return loops[i].clone();
  }

  /** Its plane, the normal outward. */
  public Plane plane() {
    return plane;
  }

  public FaceLabel label() {
    return label;
  }

  /** True area over flat area: above one for a strip of a curved side. */
  public double stretch() {
    return stretch;
  }

  /** Area of the flat polygon, m². */
  public double flatArea() {
    return flatArea;
  }

  /** Area of the surface that the face stands for, m². */
  public double area() {
    return flatArea * stretch;
  }

  public Box bounds() {
    return bounds;
  }
}
