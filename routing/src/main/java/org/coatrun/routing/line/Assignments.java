package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.coatrun.routing.siting.Cover;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.line.RiserUse;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.units.Length;

/** Reads a cover cell by cell, and riser by riser. */
final class Assignments {

  private final LineModel model;
  private final Candidates candidates;
  private final List<WorkCell> cells;

  Assignments(LineModel model, Candidates candidates, List<WorkCell> cells) {
    this.model = model;
    this.candidates = candidates;
    this.cells = cells;
  }

  /** What the cover says of each cell; nothing reaches any where there is no cover. */
  List<Assignment> of(Optional<Cover> cover) {
    var all = new ArrayList<>(Collections.nCopies(cells.size(), new Assignment(-1, -1, -1)));
    for (int k = 0; k < model.floorClasses().size(); k++) {
      for (List<Integer> floor : model.floorClasses().get(k).cells()) {
        for (int i = 0; i < floor.size(); i++) {
          int option = cover.isEmpty() ? -1 : cover.get().floors().get(k).option()[i];
          int outlet = cover.isEmpty() ? -1 : cover.get().floors().get(k).outlet()[i];
          all.set(floor.get(i), new Assignment(k, option, outlet));
        }
      }
    }
    return all;
  }

  /** The risers that some cell is sprayed through, each to the farthest floor that it serves. */
  List<RiserUse> risers(List<Assignment> assigned) {
    var far = new TreeMap<Integer, Integer>();
    for (int c = 0; c < assigned.size(); c++) {
      Assignment a = assigned.get(c);
      if (a.reached() && model.options().get(a.option()).riser().isPresent()) {
        int from = model.options().get(a.option()).from();
        far.merge(
            a.option(),
            cells.get(c).floor(),
            (x, y) -> Math.abs(x - from) >= Math.abs(y - from) ? x : y);
      }
    }
    var uses = new ArrayList<RiserUse>();
    far.forEach((j, floor) -> uses.add(use(model.options().get(j), floor)));
    return uses;
  }

  private RiserUse use(LineOption option, int to) {
    Riser riser = candidates.risers().get(option.riser().orElseThrow());
    MachineSpot spot = candidates.spots().get(option.spot());
    return new RiserUse(
        riser,
        spot.name(),
        option.pipeRises(),
        option.ground().legs(),
        option.from(),
        to,
        Length.ofMetres(Math.abs(model.ways().rise(option, to))));
  }
}
