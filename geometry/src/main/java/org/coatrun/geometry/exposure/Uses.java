package org.coatrun.geometry.exposure;

import org.coatrun.geometry.solid.FaceLabel;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.shared.shape.Vec3;

/**
 * What each patch of a body counts as where nothing covers it.
 *
 * <p>Ends are patches at the extremities whose normal is within 60° of the axis, so that mitred
 * ends are ends and the inner faces of a cope are sides; of a sweep, its own start and end, however
 * far it bends, and never its sides. Only what runs along an axis has ends or a hollow inside; a
 * plate has neither. Of deck, what does not look down counts with the ends: its top carries
 * concrete or roofing, and nobody sprays its edges.
 */
final class Uses {

  private static final double ALONG = 0.5;
  private static final double AT_END = 1e-3;
  private static final double LOOKS_DOWN = -1e-3;

  private final Form form;
  private final HollowFaces hollow;

  Uses(Form form) {
    this.form = form;
    this.hollow = HollowFaces.of(form);
  }

  CoveredPatch.Use of(Patch p) {
    if (form.soffitOnly()) {
      return p.plane().nz() < LOOKS_DOWN ? CoveredPatch.Use.SIDE : CoveredPatch.Use.END;
    }
    if (form.axis().isEmpty()) {
      return CoveredPatch.Use.SIDE;
    }
    Axis axis = form.axis().get();
    if (isEnd(p, axis)) {
      return CoveredPatch.Use.END;
    }
    boolean inner =
        p.label().kind() == FaceLabel.Kind.INNER_SIDE
            || (p.label().kind() == FaceLabel.Kind.MESH && hollow.holds(p));
    return inner ? CoveredPatch.Use.INSIDE : CoveredPatch.Use.SIDE;
  }

  private static boolean isEnd(Patch p, Axis axis) {
    Plane plane = p.plane();
    Vec3 d = axis.direction();
    double along = plane.along(d);
    FaceLabel.Kind kind = p.label().kind();
    if (kind == FaceLabel.Kind.START || kind == FaceLabel.Kind.END) {
      return axis.swept() || Math.abs(along) > ALONG;
    }
    boolean side = kind == FaceLabel.Kind.SIDE || kind == FaceLabel.Kind.INNER_SIDE;
    if ((axis.swept() && side) || Math.abs(along) < ALONG) {
      return false;
    }
    double[] range = Axis.range(p, d);
    return along > 0 ? range[1] > axis.high() - AT_END : range[0] < axis.low() + AT_END;
  }
}
