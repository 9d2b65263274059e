package org.coatrun.geometry.profile;

import java.util.OptionalDouble;
import org.coatrun.shared.shape.Profile;

/** The same profile with all corner radii left out. */
final class Sharp {

  private static final OptionalDouble NO = OptionalDouble.empty();

  private Sharp() {}

  static Profile of(Profile profile) {
    if (profile instanceof Profile.IShape p) {
      return new Profile.IShape(
          p.name(), p.width(), p.depth(), p.web(), p.flange(), NO, NO, p.slope());
    }
    if (profile instanceof Profile.AsymmetricI p) {
      return new Profile.AsymmetricI(
          p.name(), p.depth(), p.web(), flange(p.bottom()), flange(p.top()));
    }
    if (profile instanceof Profile.UShape p) {
      return new Profile.UShape(
          p.name(), p.depth(), p.width(), p.web(), p.flange(), NO, NO, p.slope());
    }
    if (profile instanceof Profile.LShape p) {
      return new Profile.LShape(p.name(), p.depth(), p.width(), p.thickness(), NO, NO, p.slope());
    }
    if (profile instanceof Profile.TShape p) {
      return new Profile.TShape(
          p.name(),
          p.depth(),
          p.width(),
          p.web(),
          p.flange(),
          NO,
          NO,
          NO,
          p.webSlope(),
          p.flangeSlope());
    }
    return formed(profile);
  }

  private static Profile formed(Profile profile) {
    if (profile instanceof Profile.CShape p) {
      return new Profile.CShape(p.name(), p.depth(), p.width(), p.wall(), p.girth(), NO);
    }
    if (profile instanceof Profile.ZShape p) {
      return new Profile.ZShape(p.name(), p.depth(), p.flangeWidth(), p.web(), p.flange(), NO, NO);
    }
    if (profile instanceof Profile.RectangleHollow p) {
      return new Profile.RectangleHollow(p.name(), p.width(), p.depth(), p.wall(), NO, NO);
    }
    if (profile instanceof Profile.Rectangle p) {
      return new Profile.Rectangle(p.name(), p.width(), p.depth(), 0);
    }
    if (profile instanceof Profile.Composite p) {
      return new Profile.Composite(p.name(), p.parts().stream().map(Sharp::of).toList());
    }
    if (profile instanceof Profile.Placed p) {
      return new Profile.Placed(p.name(), p.by(), of(p.of()));
    }
    return profile;
  }

  private static Profile.Flange flange(Profile.Flange f) {
    return new Profile.Flange(f.width(), f.thickness(), NO, NO, f.slope());
  }
}
