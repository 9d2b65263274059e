package org.coatrun.geometry.profile;

import java.util.OptionalDouble;
import org.coatrun.shared.shape.Profile;

/** Short ways to draw a profile in a test. */
final class Drawing {

  static final double INCH = 0.0254;
  static final double MM = 0.001;
  static final OptionalDouble NO = OptionalDouble.empty();

  private Drawing() {}

  static SectionOutline draw(Profile profile) {
    OutlineResult result = Outlines.of(profile);
    if (result instanceof OutlineResult.Drawn d) {
      return d.outline();
    }
    throw new AssertionError("not drawn: " + result);
  }

  static OptionalDouble some(double value) {
    return OptionalDouble.of(value);
  }

  /** An I by width, depth, web, flange and fillet in one unit. */
  static Profile i(double unit, double b, double d, double tw, double tf, double r) {
    return new Profile.IShape("", b * unit, d * unit, tw * unit, tf * unit, some(r * unit), NO, NO);
  }

  static Profile angle(double unit, double depth, double width, double t, double r) {
    return new Profile.LShape("", depth * unit, width * unit, t * unit, some(r * unit), NO, NO);
  }

  static Profile channel(double unit, double b, double d, double tw, double tf, double r) {
    return new Profile.UShape("", d * unit, b * unit, tw * unit, tf * unit, some(r * unit), NO, NO);
  }

  static Profile tee(double unit, double b, double d, double tw, double tf, double r) {
    return new Profile.TShape(
        "", d * unit, b * unit, tw * unit, tf * unit, some(r * unit), NO, NO, NO, NO);
  }

  static Profile tube(double unit, double b, double h, double t, double ri, double ro) {
    return new Profile.RectangleHollow(
        "", b * unit, h * unit, t * unit, some(ri * unit), some(ro * unit));
  }
}
