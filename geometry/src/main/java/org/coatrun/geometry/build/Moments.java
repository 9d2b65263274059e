package org.coatrun.geometry.build;

import java.util.function.ToDoubleFunction;
import org.coatrun.geometry.profile.Pieces;
import org.coatrun.geometry.profile.Quadrature;
import org.coatrun.geometry.profile.Region;
import org.coatrun.geometry.profile.Ring;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/** First moments of outlines by Green's theorem: ∬ x dA = ½ ∮ x² dy, ∬ y dA = −½ ∮ y² dx. */
final class Moments {

  private static final int SPLINE_PANELS = 12;

  /** So short an arc is exact to the last bits with eight points. */
  private static final double PANEL = Math.PI / 4;

  private Moments() {}

  /** ∬ (p − about) dA over the outline. */
  static Vec2 about(SectionOutline outline, Vec2 about) {
    Vec2 sum = Vec2.ZERO;
    for (Region region : outline.regions()) {
      sum = sum.plus(of(region.outer(), about));
      for (Ring hole : region.holes()) {
        sum = sum.plus(of(hole, about));
      }
    }
    return sum;
  }

  /** Middle of the outline's area. */
  static Vec2 centroid(SectionOutline outline) {
    Vec2 near = Pieces.start(outline.regions().get(0).outer().pieces().get(0));
    return near.plus(about(outline, near).times(1 / outline.area()));
  }

  private static Vec2 of(Ring ring, Vec2 about) {
    Vec2 sum = Vec2.ZERO;
    for (Segment2 piece : ring.pieces()) {
      sum = sum.plus(piece instanceof Segment2.Line l ? of(l, about) : ofCurve(piece, about));
    }
    return sum.times(0.5);
  }

  private static Vec2 of(Segment2.Line line, Vec2 about) {
    Vec2 a = line.from().minus(about);
    Vec2 b = line.to().minus(about);
    return new Vec2(
        (a.x() * a.x() + a.x() * b.x() + b.x() * b.x()) / 3 * (b.y() - a.y()),
        (a.y() * a.y() + a.y() * b.y() + b.y() * b.y()) / 3 * (a.x() - b.x()));
  }

  private static Vec2 ofCurve(Segment2 piece, Vec2 about) {
    return new Vec2(
        integral(piece, about, t -> t.p().x() * t.p().x() * t.d().y()),
        -integral(piece, about, t -> t.p().y() * t.p().y() * t.d().x()));
  }

  private record At(Vec2 p, Vec2 d) {}

  private static double integral(Segment2 piece, Vec2 about, ToDoubleFunction<At> f) {
    return Quadrature.integrate(
        t -> f.applyAsDouble(new At(Pieces.at(piece, t).minus(about), Pieces.slope(piece, t))),
        Pieces.first(piece),
        Pieces.last(piece),
        panels(piece));
  }

  private static int panels(Segment2 piece) {
    if (piece instanceof Segment2.Arc a) {
      return Math.max(1, (int) Math.ceil(Math.abs(a.sweep()) / PANEL));
    }
    return SPLINE_PANELS;
  }
}
