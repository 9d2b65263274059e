package org.coatrun.geometry.view;

import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/**
 * The surface of one element in facets.
 *
 * @param frame rigid frame of the element in world axes
 * @param look the facets in that frame; like elements look alike
 */
public record ElementMesh(ElementId id, Transform3 frame, Look look) {

  /** Steps of a metre at which one look is told from another. */
  private static final double PER_METRE = 1e9;

  /**
   * A form seen in the frame of an element.
   *
   * @param intoFrame from the form's axes into the frame
   */
  public record Look(Drawing form, Transform3 intoFrame) {

    // Written out: see the conventions in DEVELOPERS.md.

    @Override
    public boolean equals(Object other) {
      return other instanceof Look o && form.equals(o.form) && intoFrame.equals(o.intoFrame);
    }

    @Override
    public int hashCode() {
      return 31 * form.hashCode() + intoFrame.hashCode();
    }

    /** The facets on the axes of the frame, about the form's own origin. */
    public Facets facets() {
      return form.facets().mapped(intoFrame.about(Vec3.ZERO));
    }

    /**
     * Where the form's origin is in the frame: it may lie farther than single precision reaches.
     */
    public Vec3 at() {
      return intoFrame.origin();
    }
  }

  /**
   * The picture of an element's form.
   *
   * @param placement of the element's body
   * @param at where the form stands
   */
  public static ElementMesh of(ElementId id, Transform3 placement, Drawing form, Vec3 at) {
    Transform3 frame = rigid(placement);
    Transform3 into = frame.inverse().after(Transform3.translation(at));
    Transform3 onGrid = into.about(onGrid(into.origin()));
    return new ElementMesh(id, frame, new Look(form, onGrid));
  }

  private static Transform3 rigid(Transform3 f) {
    return f.isRigid() && f.determinant() > 0 ? f : Transform3.translation(f.origin());
  }

  private static Vec3 onGrid(Vec3 p) {
    return new Vec3(onGrid(p.x()), onGrid(p.y()), onGrid(p.z()));
  }

  /** Adding nought makes minus nought nought, which compares as unlike it. */
  private static double onGrid(double metres) {
    return Math.rint(metres * PER_METRE) / PER_METRE + 0.0;
  }
}
