package org.coatrun.geometry.profile;

import static org.coatrun.geometry.profile.ImpossibleSectionException.require;

import java.util.List;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/** Rings and regions of cold-formed, hollow and plain sections. */
final class FormedShapes {

  private FormedShapes() {}

  static Ring of(Profile.CShape p) {
    double x = p.width() / 2;
    double h = p.depth() / 2;
    double t = p.wall();
    require(t > 0 && 2 * t < p.width() && 2 * t < p.depth(), "0 < wall < half of it", t);
    require(p.girth() > t && p.girth() < h, "wall < girth < depth/2", t, p.girth(), h);
    double in = p.insideRadius().orElse(0);
    double out = in > 0 ? in + t : 0;
    return new Corners()
        .at(-x, -h, out)
        .at(x, -h, out)
        .at(x, -h + p.girth())
        .at(x - t, -h + p.girth())
        .at(x - t, -h + t, in)
        .at(-x + t, -h + t, in)
        .at(-x + t, h - t, in)
        .at(x - t, h - t, in)
        .at(x - t, h - p.girth())
        .at(x, h - p.girth())
        .at(x, h, out)
        .at(-x, h, out)
        .ring();
  }

  static Ring of(Profile.ZShape p) {
    double s = p.web() / 2;
    double h = p.depth() / 2;
    double reach = p.flangeWidth() - s;
    double t = p.flange();
    require(s > 0 && reach > s, "0 < web < flange width", p.web(), p.flangeWidth());
    require(t > 0 && t < h, "0 < flange < depth/2", t, h);
    return new Corners()
        .at(-reach, -h)
        .at(s, -h)
        .at(s, h - t, p.fillet())
        .at(reach, h - t, p.edgeRadius())
        .at(reach, h)
        .at(-s, h)
        .at(-s, -h + t, p.fillet())
        .at(-reach, -h + t, p.edgeRadius())
        .ring();
  }

  static Region of(Profile.RectangleHollow p) {
    double t = p.wall();
    double w = p.width();
    double d = p.depth();
    require(t > 0 && 2 * t < w && 2 * t < d, "0 < wall < half of width and depth", t, w, d);
    Ring outer = rectangle(w, d, p.outerRadius().orElse(0));
    return new Region(outer, List.of(rectangle(w - 2 * t, d - 2 * t, p.innerRadius().orElse(0))));
  }

  static Region of(Profile.CircleHollow p) {
    double r = p.radius();
    require(p.wall() > 0 && p.wall() <= r, "0 < wall <= radius", p.wall(), r);
    Ring outer = ellipse(r, r);
    double inner = r - p.wall();
    return new Region(outer, inner > 1e-9 * r ? List.of(ellipse(inner, inner)) : List.<Ring>of());
  }

  static Ring rectangle(double width, double depth, double radius) {
    require(width > 0 && depth > 0, "a rectangle with sides", width, depth);
    double x = width / 2;
    double y = depth / 2;
    return new Corners()
        .at(-x, -y, radius)
        .at(x, -y, radius)
        .at(x, y, radius)
        .at(-x, y, radius)
        .ring();
  }

  static Ring ellipse(double semiX, double semiY) {
    require(semiX > 0 && semiY > 0, "a radius", semiX, semiY);
    return new Ring(
        List.of(
            new Segment2.Arc(Vec2.ZERO, new Vec2(semiX, 0), new Vec2(0, semiY), 0, 2 * Math.PI)));
  }

  static Ring of(Profile.Trapezium p) {
    require(
        p.bottomWidth() > 0 && p.topWidth() >= 0 && p.depth() > 0,
        "a trapezium with sides",
        p.bottomWidth(),
        p.topWidth(),
        p.depth());
    double left = Math.min(0, p.topOffset());
    double right = Math.max(p.bottomWidth(), p.topOffset() + p.topWidth());
    double shift = -(left + right) / 2;
    double y = p.depth() / 2;
    var corners = new Corners().at(shift, -y).at(shift + p.bottomWidth(), -y);
    if (p.topWidth() > 0) {
      corners.at(shift + p.topOffset() + p.topWidth(), y);
    }
    return corners.at(shift + p.topOffset(), y).ring();
  }
}
