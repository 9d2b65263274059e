package org.coatrun.geometry.frame;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.coatrun.shared.frame.Doubled;
import org.coatrun.shared.shape.Vec3;

/**
 * Finds pieces of steel that a model holds twice: whole and cut, or plainly copied. They share
 * section, line and place; of an unlike pair the shorter one, which is the one that was cut,
 * counts.
 */
final class DoubleFinder {

  private static final double ACROSS_M = 0.005;
  private static final double SIZE_M = 0.002;
  private static final double PARALLEL = Math.cos(Math.toRadians(0.5));
  private static final double SHARED_LENGTH = 0.8;

  private final List<FramePiece> pieces;

  DoubleFinder(List<FramePiece> pieces) {
    this.pieces = pieces;
  }

  /** Each doubled piece once, sorted by the piece that does not count. */
  List<Doubled> find(PieceIndex index) {
    List<Doubled> found = new ArrayList<>();
    Set<Integer> gone = new HashSet<>();
    for (int i = 0; i < pieces.size(); i++) {
      int piece = i;
      index.forEachNear(
          pieces.get(i).box().endZone(1, 0.01),
          0,
          other -> {
            if (other > piece && !gone.contains(other) && !gone.contains(piece)) {
              pair(piece, other, found, gone);
            }
          });
    }
    found.sort((a, b) -> a.doubled().compareTo(b.doubled()));
    return found;
  }

  private void pair(int first, int second, List<Doubled> found, Set<Integer> gone) {
    FramePiece a = pieces.get(first);
    FramePiece b = pieces.get(second);
    if (!same(a, b)) {
      return;
    }
    boolean secondIsCut = b.box().length() < a.box().length() - SIZE_M;
    gone.add(secondIsCut ? first : second);
    found.add(secondIsCut ? new Doubled(b.id(), a.id()) : new Doubled(a.id(), b.id()));
  }

  private static boolean same(FramePiece a, FramePiece b) {
    return a.section().equals(b.section())
        && a.isPlate() == b.isPlate()
        && sameLine(a.box(), b.box())
        && sameAcross(a.box(), b.box())
        && sameLength(a.box(), b.box(), a.isPlate());
  }

  private static boolean sameLine(OrientedBox a, OrientedBox b) {
    Vec3 between = b.centre().minus(a.centre());
    Vec3 off = between.minus(a.along().times(between.dot(a.along())));
    return Math.abs(a.along().dot(b.along())) > PARALLEL && off.length() < ACROSS_M;
  }

  private static boolean sameAcross(OrientedBox a, OrientedBox b) {
    return close(Math.max(a.halfWidth(), a.halfHeight()), Math.max(b.halfWidth(), b.halfHeight()))
        && close(Math.min(a.halfWidth(), a.halfHeight()), Math.min(b.halfWidth(), b.halfHeight()));
  }

  private static boolean close(double a, double b) {
    return Math.abs(a - b) < SIZE_M;
  }

  private static boolean sameLength(OrientedBox a, OrientedBox b, boolean plate) {
    double apart = Math.abs(b.centre().minus(a.centre()).dot(a.along()));
    if (plate) {
      return apart < SIZE_M && close(a.halfLength(), b.halfLength());
    }
    double shared =
        Math.min(
            a.halfLength() + b.halfLength() - apart, 2 * Math.min(a.halfLength(), b.halfLength()));
    return shared > SHARED_LENGTH * Math.max(a.length(), b.length());
  }
}
