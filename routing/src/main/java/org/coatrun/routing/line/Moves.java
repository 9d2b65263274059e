package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Move;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.line.Wording;

/** The steps of the work, in order, one sentence each. */
final class Moves {

  private final LineRequest request;
  private final List<MachineSpot> spots;
  private final List<Move> moves = new ArrayList<>();

  private Moves(LineRequest request, List<MachineSpot> spots) {
    this.request = request;
    this.spots = spots;
  }

  static List<Move> of(LineRequest request, List<MachineSpot> spots, List<SetUp> setUps) {
    var all = new Moves(request, spots);
    SetUp before = null;
    for (SetUp s : setUps) {
      all.add(before, s);
      before = s;
    }
    return all.moves;
  }

  private void add(SetUp before, SetUp s) {
    if (before == null || !before.machine().equals(s.machine())) {
      String what = before == null ? "Set the machine at " : "Move the machine to ";
      add(Move.Kind.SET_MACHINE, what + s.machine() + " on " + storeyOf(s.machine()) + ".");
    }
    boolean sameLine =
        before != null && before.machine().equals(s.machine()) && before.riser().equals(s.riser());
    if (!sameLine && s.riser().isPresent()) {
      add(Move.Kind.RAISE_RISER, "Raise the line at " + s.riser().get() + ".");
    }
    String floor = request.floors().get(s.floor()).storey();
    Wording words = request.wording();
    add(
        Move.Kind.SET_OUTLET,
        floor + ": set outlet " + s.number() + " at " + words.place(s.outlet()) + ".");
    add(
        Move.Kind.SPRAY,
        String.format(
            Locale.ROOT,
            "%s: spray %s in %d places from outlet %d, the farthest first, with up to %s of hose.",
            floor,
            words.coating(s.coating()),
            s.cells().size(),
            s.number(),
            words.about(s.hose())));
  }

  private String storeyOf(String machine) {
    return spots.stream()
        .filter(m -> m.name().equals(machine))
        .map(m -> request.floors().get(m.floor()).storey())
        .findFirst()
        .orElseThrow();
  }

  private void add(Move.Kind kind, String sentence) {
    moves.add(new Move(moves.size() + 1, kind, sentence));
  }
}
