package org.coatrun.geometry.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.coatrun.shared.frame.Connection;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.units.Length;

/** Finds what each piece meets: at its ends, through plates, along a brace's line, in passing. */
final class ConnectionFinder {

  private static final double PARALLEL = Math.cos(Math.toRadians(10));
  private static final int[] ENDS = {-1, 1};

  private final List<FramePiece> pieces;
  private final PieceIndex index;
  private final FrameOptions options;
  private final List<Connection> found = new ArrayList<>();

  /**
   * @param pieces those that take part: doubled ones do not
   */
  ConnectionFinder(List<FramePiece> pieces, PieceIndex index, FrameOptions options) {
    this.pieces = pieces;
    this.index = index;
    this.options = options;
  }

  /** All connections, sorted by member and support. */
  List<Connection> find() {
    for (int i = 0; i < pieces.size(); i++) {
      FramePiece piece = pieces.get(i);
      if (piece.isPlate()) {
        touching(i);
      } else {
        for (int end : ENDS) {
          atEnd(i, end);
        }
        if (piece.isColumn()) {
          passing(i);
        }
      }
    }
    dropPassesOfTheConnected();
    found.sort(
        Comparator.comparing(Connection::member)
            .thenComparing(Connection::support)
            .thenComparing(Connection::at));
    return found;
  }

  /** What is joined at an end does not merely pass. */
  private void dropPassesOfTheConnected() {
    Map<ElementId, Set<ElementId>> joined = new HashMap<>();
    for (Connection c : found) {
      if (c.kind() != Connection.Kind.PASSES) {
        joined.computeIfAbsent(c.member(), k -> new HashSet<>()).add(c.support());
      }
    }
    found.removeIf(
        c ->
            c.kind() == Connection.Kind.PASSES
                && (joined.getOrDefault(c.member(), Set.of()).contains(c.support())
                    || joined.getOrDefault(c.support(), Set.of()).contains(c.member())));
  }

  private void atEnd(int piece, int end) {
    FramePiece a = pieces.get(piece);
    String at = EndWords.of(a, end);
    boolean seated = a.role() == Role.JOIST || a.role() == Role.TRUSS;
    double seat = seated ? options.seat().metres() : 0;
    List<Integer> hits = meeting(piece, a.box().endZone(end, options.endGap().metres()), seat);
    if (hits.isEmpty()) {
      throughPlates(piece, end, at);
      return;
    }
    for (int hit : hits) {
      join(a, pieces.get(hit), end, at);
    }
  }

  /** What carries a piece where it meets a zone; only columns where one does. */
  private List<Integer> meeting(int piece, OrientedBox zone, double gap) {
    List<Integer> hits = near(piece, zone, gap, b -> !b.isPlate() && carries(pieces.get(piece), b));
    if (hits.stream().anyMatch(h -> pieces.get(h).isColumn())) {
      hits.removeIf(h -> !pieces.get(h).isColumn());
    }
    return hits;
  }

  /** The pieces of a kind within a gap of a zone, but for one, in order. */
  private List<Integer> near(int but, OrientedBox zone, double gap, Predicate<FramePiece> kind) {
    List<Integer> hits = new ArrayList<>();
    index.forEachNear(
        zone,
        gap,
        other -> {
          FramePiece b = pieces.get(other);
          if (other != but && kind.test(b) && zone.isWithin(gap, b.box())) {
            hits.add(other);
          }
        });
    hits.sort(Comparator.naturalOrder());
    return hits;
  }

  /** A beam that meets a brace carries it, not the other way round. */
  private static boolean carries(FramePiece a, FramePiece b) {
    return !(b.isBrace() && !a.isBrace());
  }

  private void throughPlates(int piece, int end, String at) {
    FramePiece a = pieces.get(piece);
    OrientedBox zone = a.box().endZone(end, options.endGap().metres());
    double touch = options.contactGap().metres();
    List<Integer> plates = near(piece, zone, 0, FramePiece::isPlate);
    boolean joined = false;
    for (int plate : plates) {
      FramePiece p = pieces.get(plate);
      for (int hit : meeting(piece, p.box(), touch)) {
        join(a, pieces.get(hit), end, at + " by plate " + p.label());
        joined = true;
      }
    }
    if (!joined && a.isBrace()) {
      carriedOn(piece, end, at);
    }
  }

  private void carriedOn(int piece, int end, String at) {
    FramePiece a = pieces.get(piece);
    double reach = options.braceReach().metres();
    OrientedBox box = a.box();
    OrientedBox ray =
        new OrientedBox(
            box.end(end).plus(box.along().times(end * reach / 2)),
            box.along(),
            box.across(),
            box.up(),
            reach / 2,
            0.001,
            0.001);
    for (int hit : meeting(piece, ray, 0)) {
      join(a, pieces.get(hit), end, at + " where its line is carried on");
    }
  }

  private void join(FramePiece a, FramePiece b, int end, String at) {
    boolean parallel = Math.abs(a.box().along().dot(b.box().along())) > PARALLEL;
    Connection.Kind kind;
    if (a.isColumn() && b.isColumn()) {
      if (end * a.box().along().z() > 0) {
        return; // the upper one says it
      }
      kind = Connection.Kind.STACKED_ON;
    } else if (a.isColumn()) {
      kind = Connection.Kind.BEARS_ON;
    } else if (parallel) {
      if (!endsMeet(a.box(), b.box(), end)) {
        return; // side by side
      }
      kind = Connection.Kind.SPLICED_TO;
    } else {
      kind = Connection.Kind.FRAMES_INTO;
    }
    add(a, b, kind, at, a.box().endZone(end, 1e-6).gapTo(b.box()));
  }

  private boolean endsMeet(OrientedBox a, OrientedBox b, int end) {
    double reach = Math.max(0.1, options.endGap().metres() + a.halfHeight());
    return Math.min(a.end(end).distance(b.end(1)), a.end(end).distance(b.end(-1))) < reach;
  }

  private void passing(int column) {
    FramePiece c = pieces.get(column);
    double touch = options.contactGap().metres();
    for (int hit : near(column, c.box(), touch, b -> !b.isPlate() && !b.isColumn())) {
      FramePiece b = pieces.get(hit);
      add(b, c, Connection.Kind.PASSES, "its side", c.box().gapTo(b.box()));
    }
  }

  private void touching(int plate) {
    FramePiece p = pieces.get(plate);
    double touch = options.contactGap().metres();
    for (int hit : near(plate, p.box(), touch, b -> !b.isPlate())) {
      FramePiece b = pieces.get(hit);
      add(p, b, Connection.Kind.TOUCHES, "its face", p.box().gapTo(b.box()));
    }
  }

  private void add(FramePiece a, FramePiece b, Connection.Kind kind, String at, double gap) {
    found.add(new Connection(a.id(), b.id(), kind, at, Length.ofMetres(Math.max(0, gap))));
  }
}
