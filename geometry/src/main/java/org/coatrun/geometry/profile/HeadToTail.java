package org.coatrun.geometry.profile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.shape.Segment2;

/**
 * Pieces of an outline, each beginning where the last one ends.
 *
 * <p>Some models flag a part of an outline to run backwards that lies head to tail with the others
 * as it is written. Such parts are turned round where that alone closes the outline.
 *
 * @param turned whether a part was turned round
 */
record HeadToTail(List<Segment2> pieces, boolean turned) {

  /** Pieces as they come, or with parts of them turned round; the latter only where it helps. */
  static HeadToTail of(List<Segment2> pieces, double reach) {
    List<List<Segment2>> runs = runs(pieces, reach);
    if (runs.size() == 1) {
      return new HeadToTail(pieces, false);
    }
    return beginning(runs.get(0), runs, reach)
        .or(() -> beginning(backwards(runs.get(0)), runs, reach))
        .map(closed -> new HeadToTail(closed, true))
        .orElseGet(() -> new HeadToTail(pieces, false));
  }

  /** Cut wherever a piece does not begin where the one before it ends. */
  private static List<List<Segment2>> runs(List<Segment2> pieces, double reach) {
    var runs = new ArrayList<List<Segment2>>();
    for (Segment2 piece : pieces) {
      if (runs.isEmpty() || !follows(runs.get(runs.size() - 1), List.of(piece), reach)) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(piece);
    }
    return runs;
  }

  private static Optional<List<Segment2>> beginning(
      List<Segment2> first, List<List<Segment2>> runs, double reach) {
    var chain = new ArrayList<Segment2>(first);
    for (List<Segment2> run : runs.subList(1, runs.size())) {
      List<Segment2> next = follows(chain, run, reach) ? run : backwards(run);
      if (!follows(chain, next, reach)) {
        return Optional.empty();
      }
      chain.addAll(next);
    }
    return follows(chain, chain, reach) ? Optional.of(chain) : Optional.empty();
  }

  private static boolean follows(List<Segment2> before, List<Segment2> next, double reach) {
    return Pieces.end(before.get(before.size() - 1)).distance(Pieces.start(next.get(0))) <= reach;
  }

  private static List<Segment2> backwards(List<Segment2> run) {
    var back = new ArrayList<Segment2>();
    run.forEach(piece -> back.add(Pieces.reversed(piece)));
    Collections.reverse(back);
    return back;
  }
}
