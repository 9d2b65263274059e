package org.coatrun.geometry.profile;

import static org.coatrun.geometry.profile.ImpossibleSectionException.require;

import java.util.OptionalDouble;
import org.coatrun.shared.shape.Profile;

/**
 * Rings of rolled sections.
 *
 * <p>Convention for sloped flanges, which the standards of rolled sections and the model schema
 * leave to each other: the thickness is that at the middle of the overhang, half-way between the
 * face of the web and the tip of the flange. So the area without fillets does not depend on the
 * slope. Legs of angles and stems of tees likewise, at the middle of their free length.
 */
final class RolledShapes {

  private RolledShapes() {}

  static Ring of(Profile.IShape p) {
    var flange = new Profile.Flange(p.width(), p.flange(), p.fillet(), p.edgeRadius(), p.slope());
    return of(p.depth(), p.web(), flange, flange);
  }

  static Ring of(Profile.AsymmetricI p) {
    return of(p.depth(), p.web(), p.bottom(), p.top());
  }

  private static Ring of(double depth, double web, Profile.Flange bottom, Profile.Flange top) {
    require(web > 0, "a web with a thickness", web);
    double s = web / 2;
    double h = depth / 2;
    var low = new Taper(bottom, s);
    var high = new Taper(top, s);
    require(low.root + high.root < depth, "flanges within the depth", low.root, high.root, depth);
    return new Corners()
        .at(-low.half, -h)
        .at(low.half, -h)
        .at(low.half, -h + low.tip, bottom.edgeRadius())
        .at(s, -h + low.root, bottom.fillet())
        .at(s, h - high.root, top.fillet())
        .at(high.half, h - high.tip, top.edgeRadius())
        .at(high.half, h)
        .at(-high.half, h)
        .at(-high.half, h - high.tip, top.edgeRadius())
        .at(-s, h - high.root, top.fillet())
        .at(-s, -h + low.root, bottom.fillet())
        .at(-low.half, -h + low.tip, bottom.edgeRadius())
        .ring();
  }

  static Ring of(Profile.UShape p) {
    require(p.web() > 0 && p.web() < p.width(), "0 < web < width", p.web(), p.width());
    double x = p.width() / 2;
    double h = p.depth() / 2;
    double rise = slope(p.slope()) * (p.width() - p.web()) / 2;
    double tip = p.flange() - rise;
    double root = p.flange() + rise;
    require(tip > 0 && 2 * root < p.depth(), "flanges within the depth", tip, root, p.depth());
    return new Corners()
        .at(-x, -h)
        .at(x, -h)
        .at(x, -h + tip, p.edgeRadius())
        .at(-x + p.web(), -h + root, p.fillet())
        .at(-x + p.web(), h - root, p.fillet())
        .at(x, h - tip, p.edgeRadius())
        .at(x, h)
        .at(-x, h)
        .ring();
  }

  static Ring of(Profile.LShape p) {
    double x = p.width() / 2;
    double h = p.depth() / 2;
    double t = p.thickness();
    require(
        t > 0 && t < p.width() && t < p.depth(), "0 < thickness < legs", t, p.width(), p.depth());
    double k = slope(p.slope());
    double middleX = -x + (t + p.width()) / 2;
    double middleY = -h + (t + p.depth()) / 2;
    // inner faces: y = -h + t + k (middleX - x) and x = -x + t + k (middleY - y)
    double rootX = (-x + t + k * (middleY + h - t - k * middleX)) / (1 - k * k);
    double rootY = -h + t + k * (middleX - rootX);
    double tipX = t - k * (p.depth() - t) / 2;
    double tipY = t - k * (p.width() - t) / 2;
    require(tipX > 0 && tipY > 0, "a leg with a thickness at its tip", tipX, tipY);
    return new Corners()
        .at(-x, -h)
        .at(x, -h)
        .at(x, -h + tipY, p.edgeRadius())
        .at(rootX, rootY, p.fillet())
        .at(-x + tipX, h, p.edgeRadius())
        .at(-x, h)
        .ring();
  }

  static Ring of(Profile.TShape p) {
    double h = p.depth() / 2;
    double b = p.width() / 2;
    double s = p.web() / 2;
    require(s > 0 && s < b, "0 < web < width", p.web(), p.width());
    require(p.flange() > 0 && p.flange() < p.depth(), "0 < flange < depth", p.flange(), p.depth());
    double kf = slope(p.flangeSlope());
    double kw = slope(p.webSlope());
    double middleX = (s + b) / 2;
    double middleY = -p.flange() / 2;
    double under = h - p.flange();
    // underside: y = under - kf (middleX - x); face of the stem: x = s + kw (y - middleY)
    double rootX = (s + kw * (under - kf * middleX - middleY)) / (1 - kw * kf);
    double rootY = under - kf * (middleX - rootX);
    double tip = p.flange() - kf * (b - s) / 2;
    double foot = s + kw * (-h - middleY);
    require(tip > 0 && foot > 0, "a thickness at flange tip and stem end", tip, foot);
    return new Corners()
        .at(-foot, -h, p.webEdgeRadius())
        .at(foot, -h, p.webEdgeRadius())
        .at(rootX, rootY, p.fillet())
        .at(b, h - tip, p.flangeEdgeRadius())
        .at(b, h)
        .at(-b, h)
        .at(-b, h - tip, p.flangeEdgeRadius())
        .at(-rootX, rootY, p.fillet())
        .ring();
  }

  private static double slope(OptionalDouble angle) {
    return Math.tan(angle.orElse(0));
  }

  /** Half width of a flange and its thickness at tip and web. */
  private static final class Taper {
    private final double half;
    private final double tip;
    private final double root;

    private Taper(Profile.Flange f, double halfWeb) {
      half = f.width() / 2;
      require(half > halfWeb, "web < flange width", 2 * halfWeb, f.width());
      double rise = slope(f.slope()) * (half - halfWeb) / 2;
      tip = f.thickness() - rise;
      root = f.thickness() + rise;
      require(tip > 0, "a flange with a thickness at its tip", tip);
    }
  }
}
