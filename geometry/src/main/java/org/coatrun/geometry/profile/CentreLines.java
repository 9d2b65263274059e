package org.coatrun.geometry.profile;

import static org.coatrun.geometry.profile.ImpossibleSectionException.require;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/**
 * The region that a strip of even thickness fills: its centre line moved half the thickness to
 * either side, corners mitred, bends kept as arcs.
 *
 * <p>Arcs of circles that run on smoothly stay exact; other curves, and arcs that meet a corner,
 * are first taken as chords of two degrees.
 */
final class CentreLines {

  private static final double CHORD = Math.toRadians(2);
  private static final double SMOOTH = 1e-4;
  private static final double LONGEST_MITRE = 10;

  private CentreLines() {}

  static Region of(Profile.CentreLine p) {
    double half = p.thickness() / 2;
    require(half > 0, "a thickness", p.thickness());
    List<Segment2> path = path(p);
    boolean loop = isLoop(path, half);
    List<Segment2> left = offset(path, half, loop);
    List<Segment2> right = offset(path, -half, loop);
    Region region = loop ? hollow(new Ring(left), new Ring(right)) : strip(left, right);
    require(region.area() > 0, "a strip with an area", p.thickness());
    return region;
  }

  private static Region hollow(Ring a, Ring b) {
    boolean aOutside = Math.abs(a.area()) > Math.abs(b.area());
    return new Region(aOutside ? a : b, List.of(aOutside ? b : a));
  }

  private static Region strip(List<Segment2> left, List<Segment2> right) {
    var out = new ArrayList<>(right);
    Vec2 rightEnd = Pieces.end(right.get(right.size() - 1));
    Vec2 leftEnd = Pieces.end(left.get(left.size() - 1));
    out.add(new Segment2.Line(rightEnd, leftEnd));
    for (int i = left.size() - 1; i >= 0; i--) {
      out.add(Pieces.reversed(left.get(i)));
    }
    out.add(new Segment2.Line(Pieces.start(left.get(0)), Pieces.start(right.get(0))));
    return new Region(new Ring(out), List.of());
  }

  private static boolean isLoop(List<Segment2> path, double half) {
    Vec2 start = Pieces.start(path.get(0));
    return path.size() > 1 && start.distance(Pieces.end(path.get(path.size() - 1))) < 1e-6 * half;
  }

  /** The centre line without pieces of no length; what cannot be moved exactly as chords. */
  private static List<Segment2> path(Profile.CentreLine p) {
    var pieces = new ArrayList<Segment2>();
    for (Segment2 piece : p.path().segments()) {
      if (Pieces.length(piece) > 1e-9) {
        pieces.add(piece);
      }
    }
    require(!pieces.isEmpty(), "a centre line with a length");
    var out = new ArrayList<Segment2>();
    for (int i = 0; i < pieces.size(); i++) {
      Segment2 piece = pieces.get(i);
      boolean smooth =
          (i == 0 || runsOn(pieces.get(i - 1), piece))
              && (i + 1 == pieces.size() || runsOn(piece, pieces.get(i + 1)));
      if (piece instanceof Segment2.Line
          || (piece instanceof Segment2.Arc a && Pieces.isCircular(a) && smooth)) {
        out.add(piece);
      } else {
        out.addAll(chords(piece));
      }
    }
    return out;
  }

  private static boolean runsOn(Segment2 a, Segment2 b) {
    Vec2 out = direction(a, Pieces.last(a));
    Vec2 in = direction(b, Pieces.first(b));
    return out.distance(in) < SMOOTH;
  }

  private static Vec2 direction(Segment2 piece, double t) {
    Vec2 d = Pieces.slope(piece, t).unit();
    return piece instanceof Segment2.Arc a && a.sweep() < 0 ? d.times(-1) : d;
  }

  private static List<Segment2> chords(Segment2 piece) {
    int n =
        piece instanceof Segment2.Arc a
            ? Math.max(2, (int) Math.ceil(Math.abs(a.sweep()) / CHORD))
            : 90;
    double from = Pieces.first(piece);
    double step = (Pieces.last(piece) - from) / n;
    var out = new ArrayList<Segment2>();
    for (int i = 0; i < n; i++) {
      Vec2 a = Pieces.at(piece, from + i * step);
      out.add(new Segment2.Line(a, Pieces.at(piece, from + (i + 1) * step)));
    }
    return out;
  }

  /** The path moved {@code by} to its left. */
  private static List<Segment2> offset(List<Segment2> path, double by, boolean loop) {
    var out = new ArrayList<Segment2>();
    for (Segment2 piece : path) {
      Segment2 moved = moved(piece, by);
      if (moved != null) {
        join(out, moved, by);
      }
    }
    require(!out.isEmpty(), "a thickness that the bends have room for", 2 * by);
    if (loop) {
      Segment2 first = out.remove(0);
      join(out, first, by);
      Segment2 last = out.remove(out.size() - 1);
      // the first piece, trimmed at its start, is also the last: bring its start to the front
      out.add(0, last);
    }
    return out;
  }

  /** A piece moved to its left; null where nothing of an arc is left. */
  private static Segment2 moved(Segment2 piece, double by) {
    if (piece instanceof Segment2.Line l) {
      Vec2 side = l.to().minus(l.from()).unit().left().times(by);
      return new Segment2.Line(l.from().plus(side), l.to().plus(side));
    }
    var a = (Segment2.Arc) piece;
    double turn = Math.signum(a.u().cross(a.v()) * a.sweep());
    double k = 1 - turn * by / a.u().length();
    return k <= 1e-9
        ? null
        : new Segment2.Arc(a.centre(), a.u().times(k), a.v().times(k), a.start(), a.sweep());
  }

  /** Appends a piece; two lines are trimmed or prolonged to where they meet. */
  private static void join(List<Segment2> out, Segment2 next, double by) {
    if (out.isEmpty()) {
      out.add(next);
      return;
    }
    Segment2 last = out.get(out.size() - 1);
    Vec2 end = Pieces.end(last);
    Vec2 start = Pieces.start(next);
    if (end.distance(start) < 1e-9 * Math.abs(by)) {
      out.add(next);
      return;
    }
    if (last instanceof Segment2.Line a && next instanceof Segment2.Line b) {
      Vec2 corner = meeting(a, b);
      if (corner != null && corner.distance(end) < LONGEST_MITRE * Math.abs(by)) {
        out.set(out.size() - 1, new Segment2.Line(a.from(), corner));
        out.add(new Segment2.Line(corner, b.to()));
        return;
      }
    }
    out.add(new Segment2.Line(end, start));
    out.add(next);
  }

  private static Vec2 meeting(Segment2.Line a, Segment2.Line b) {
    Vec2 da = a.to().minus(a.from());
    Vec2 db = b.to().minus(b.from());
    double cross = da.cross(db);
    if (Math.abs(cross) < 1e-9 * da.length() * db.length()) {
      return null;
    }
    return a.from().plus(da.times(b.from().minus(a.from()).cross(db) / cross));
  }
}
