package org.coatrun.geometry.solid;

/**
 * What a face is.
 *
 * @param edge for a side of a sweep the number of the profile edge that it comes from, counted from
 *     0 over the whole profile (outer ring first); strips of one arc share a number; -1 where there
 *     is no such edge
 */
public record FaceLabel(Kind kind, int edge) {

  /** Kinds of faces. */
  public enum Kind {
    /** Outer side of a sweep. */
    SIDE,
    /** Side of a sweep along a hole of the profile. */
    INNER_SIDE,
    /** Where a sweep starts. */
    START,
    /** Where a sweep ends. */
    END,
    /** Left by a cutter. */
    CUT,
    /** Face of a mesh, a brep or a plain solid. */
    MESH
  }

  public static final FaceLabel START = new FaceLabel(Kind.START, -1);
  public static final FaceLabel END = new FaceLabel(Kind.END, -1);
  public static final FaceLabel CUT = new FaceLabel(Kind.CUT, -1);
  public static final FaceLabel MESH = new FaceLabel(Kind.MESH, -1);

  /** Outer side along profile edge {@code edge}. */
  public static FaceLabel side(int edge) {
    return new FaceLabel(Kind.SIDE, edge);
  }

  /** Side along profile edge {@code edge} of a hole of the profile. */
  public static FaceLabel innerSide(int edge) {
    return new FaceLabel(Kind.INNER_SIDE, edge);
  }
}
