package org.coatrun.geometry.profile;

import static org.coatrun.geometry.profile.ImpossibleSectionException.require;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/** Rings of outlines that a model draws piece by piece. */
final class FreeShapes {

  private static final double SAME_POINT = 1e-9;
  private static final double GAP = 1e-3;

  private FreeShapes() {}

  static Region of(Profile.Outline p) {
    Ring outer = ring(p.outer());
    double area = Math.abs(outer.area());
    var holes = new ArrayList<Ring>();
    for (Curve2 hole : p.holes()) {
      Ring ring = ring(hole);
      area -= Math.abs(ring.area());
      holes.add(ring);
    }
    if (!(area > 0)) {
      throw ImpossibleSectionException.of("the outline encloses no area");
    }
    return new Region(outer, holes);
  }

  /**
   * The curve as a ring: pieces without length dropped, gaps closed by a line.
   *
   * @throws ImpossibleSectionException where fewer than three corners are left or the gap is wide
   */
  static Ring ring(Curve2 curve) {
    double size = size(curve);
    var out = new ArrayList<Segment2>();
    chain(curve, size).pieces().forEach(piece -> join(out, piece, size));
    close(out, size);
    Ring ring = new Ring(out);
    double area = Math.abs(ring.area());
    require(area > 1e-12 * size * size, "an outline with an area", area);
    return ring;
  }

  /** What of an outline was read otherwise than written, or is in doubt. */
  static List<OutlineResult.Note> notes(Profile.Outline p) {
    List<Curve2> curves = Stream.concat(Stream.of(p.outer()), p.holes().stream()).toList();
    var notes = new ArrayList<OutlineResult.Note>();
    if (curves.stream().anyMatch(curve -> chain(curve, size(curve)).turned())) {
      notes.add(
          new OutlineResult.Note(
              SurfaceFinding.PIECES_TURNED, "parts of its outline run against the others"));
    }
    if (curves.stream().anyMatch(c -> SelfCrossing.of(FlatRing.of(ring(c), 2).points()))) {
      notes.add(
          new OutlineResult.Note(SurfaceFinding.CROSSED_OUTLINE, "its outline crosses itself"));
    }
    return notes;
  }

  private static HeadToTail chain(Curve2 curve, double size) {
    List<Segment2> pieces =
        curve.segments().stream().filter(p -> Pieces.length(p) > SAME_POINT * size).toList();
    if (pieces.isEmpty()) {
      throw ImpossibleSectionException.of("the outline has no length");
    }
    return HeadToTail.of(pieces, GAP * size);
  }

  private static void join(List<Segment2> out, Segment2 piece, double size) {
    if (!out.isEmpty()) {
      bridge(out, Pieces.end(out.get(out.size() - 1)), Pieces.start(piece), size);
    }
    out.add(piece);
  }

  private static void close(List<Segment2> out, double size) {
    Vec2 end = Pieces.end(out.get(out.size() - 1));
    Vec2 start = Pieces.start(out.get(0));
    if (end.distance(start) > SAME_POINT * size) {
      out.add(new Segment2.Line(end, start));
    }
  }

  private static void bridge(List<Segment2> out, Vec2 from, Vec2 to, double size) {
    double gap = from.distance(to);
    if (gap > GAP * size) {
      throw ImpossibleSectionException.of("the outline's pieces do not follow each other");
    }
    if (gap > SAME_POINT * size) {
      out.add(new Segment2.Line(from, to));
    }
  }

  private static double size(Curve2 curve) {
    var extent = new Extent();
    curve.segments().forEach(extent::add);
    return extent.rectangle().diagonal();
  }
}
