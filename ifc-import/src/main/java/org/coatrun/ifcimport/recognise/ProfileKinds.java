package org.coatrun.ifcimport.recognise;

import org.coatrun.shared.shape.Profile;

/** Profiles that only steel is rolled, welded or folded to. */
final class ProfileKinds {

  /**
   * The thickest web or wall that is taken for steel, in metres: the heaviest W14 has a web of 4
   * in; concrete tees and girders start above.
   */
  private static final double THICKEST = 0.11;

  private ProfileKinds() {}

  /** The plain name of the steel shape; empty where the profile may be of anything. */
  static String steelShape(Profile profile) {
    if (profile instanceof Profile.Placed placed) {
      return steelShape(placed.of());
    }
    if (profile instanceof Profile.Composite composite) {
      return composite.parts().isEmpty() ? "" : steelShape(composite.parts().get(0));
    }
    return thickness(profile) <= THICKEST ? name(profile) : "";
  }

  /** Whether the shape is one that pipes of other trades have too. */
  static boolean isHollow(String steelShape) {
    return steelShape.endsWith("tube");
  }

  private static String name(Profile profile) {
    if (profile instanceof Profile.IShape || profile instanceof Profile.AsymmetricI) {
      return "I-shape";
    }
    if (profile instanceof Profile.UShape) {
      return "channel";
    }
    if (profile instanceof Profile.LShape) {
      return "angle";
    }
    if (profile instanceof Profile.TShape) {
      return "tee";
    }
    if (profile instanceof Profile.CShape || profile instanceof Profile.ZShape) {
      return "cold-formed shape";
    }
    if (profile instanceof Profile.RectangleHollow) {
      return "rectangular tube";
    }
    return profile instanceof Profile.CircleHollow ? "round tube" : "";
  }

  private static double thickness(Profile profile) {
    if (profile instanceof Profile.IShape i) {
      return i.web();
    }
    if (profile instanceof Profile.AsymmetricI i) {
      return i.web();
    }
    if (profile instanceof Profile.UShape u) {
      return u.web();
    }
    if (profile instanceof Profile.LShape l) {
      return l.thickness();
    }
    if (profile instanceof Profile.TShape t) {
      return t.web();
    }
    if (profile instanceof Profile.RectangleHollow r) {
      return r.wall();
    }
    return profile instanceof Profile.CircleHollow c ? c.wall() : 0;
  }
}
