package org.coatrun.geometry.profile;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/** How long straight sides of different regions lie against each other. */
final class Contact {

  private static final double TOUCH = 1e-6;

  private Contact() {}

  static double between(List<Region> regions) {
    List<List<Segment2.Line>> lines = new ArrayList<>();
    for (Region r : regions) {
      var straight = new ArrayList<Segment2.Line>();
      for (Segment2 p : r.outer().pieces()) {
        if (p instanceof Segment2.Line l) {
          straight.add(l);
        }
      }
      lines.add(straight);
    }
    double sum = 0;
    for (int i = 0; i < lines.size(); i++) {
      for (int j = i + 1; j < lines.size(); j++) {
        sum += shared(lines.get(i), lines.get(j));
      }
    }
    return sum;
  }

  private static double shared(List<Segment2.Line> as, List<Segment2.Line> bs) {
    double sum = 0;
    for (Segment2.Line a : as) {
      for (Segment2.Line b : bs) {
        sum += shared(a, b);
      }
    }
    return sum;
  }

  /** Overlap of two lines that run against each other within a micrometre. */
  private static double shared(Segment2.Line a, Segment2.Line b) {
    Vec2 d = a.to().minus(a.from()).unit();
    Vec2 e = b.to().minus(b.from());
    boolean apart =
        Math.abs(d.cross(b.from().minus(a.from()))) > TOUCH
            || Math.abs(d.cross(b.to().minus(a.from()))) > TOUCH;
    if (apart || d.dot(e) >= 0) {
      return 0;
    }
    double low = Math.max(0, d.dot(b.to().minus(a.from())));
    double high = Math.min(a.to().distance(a.from()), d.dot(b.from().minus(a.from())));
    return Math.max(0, high - low);
  }
}
