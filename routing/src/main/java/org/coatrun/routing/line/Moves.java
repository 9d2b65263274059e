package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.Move;
import org.coatrun.shared.line.SetUp;

/** The steps of the work, in order, one sentence each. */
final class Moves {

  private final List<FloorOutline> floors;
  private final List<Move> moves = new ArrayList<>();

  private Moves(List<FloorOutline> floors) {
    this.floors = floors;
  }

  static List<Move> of(List<FloorOutline> floors, List<SetUp> setUps) {
    var all = new Moves(floors);
    SetUp before = null;
    for (SetUp s : setUps) {
      all.add(before, s);
      before = s;
    }
    return all.moves;
  }

  private void add(SetUp before, SetUp s) {
    if (before == null || !before.machine().equals(s.machine())) {
      add(Move.Kind.SET_MACHINE, "Set the machine at " + s.machine() + ".");
    }
    boolean sameLine =
        before != null && before.machine().equals(s.machine()) && before.riser().equals(s.riser());
    if (!sameLine && s.riser().isPresent()) {
      add(Move.Kind.RAISE_RISER, "Raise the line at " + s.riser().get() + ".");
    }
    String floor = floors.get(s.floor()).storey();
    add(
        Move.Kind.SET_OUTLET,
        String.format(
            Locale.ROOT,
            "%s: set outlet %d at x %.1f ft, y %.1f ft.",
            floor,
            s.number(),
            s.outlet().x() / 0.3048,
            s.outlet().y() / 0.3048));
    add(
        Move.Kind.SPRAY,
        String.format(
            Locale.ROOT,
            "%s: spray %.0f board feet in %d places from outlet %d, the farthest first, with up to"
                + " %.0f ft of hose.",
            floor,
            s.coating().boardFeet(),
            s.cells().size(),
            s.number(),
            s.hose().feet()));
  }

  private void add(Move.Kind kind, String sentence) {
    moves.add(new Move(moves.size() + 1, kind, sentence));
  }
}
