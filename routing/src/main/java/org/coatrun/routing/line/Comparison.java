package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.coatrun.routing.siting.Cover;
import org.coatrun.routing.siting.CoverResult;
import org.coatrun.routing.siting.SpotRanking;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.line.SpotComparison;
import org.coatrun.shared.units.Length;

/** The best machine spots, each taken alone, side by side. */
final class Comparison {

  private final LineRequest request;
  private final LineModel model;
  private final List<MachineSpot> spots;
  private final List<Riser> risers;

  Comparison(LineRequest request, LineModel model, List<MachineSpot> spots, List<Riser> risers) {
    this.request = request;
    this.model = model;
    this.spots = spots;
    this.risers = risers;
  }

  /** A row of the table, and the cover that it stands for. */
  record Compared(SpotComparison row, CoverResult result) {}

  /** The best spots, the plan's own among those compared. */
  List<Compared> best(int count, CoverResult plan) {
    var rows = new ArrayList<Compared>();
    for (SpotRanking.Alone alone :
        SpotRanking.best(model.problem(), count, plan, request.searchNodes())) {
      CoverResult result = alone.result();
      result.cover().ifPresent(c -> rows.add(new Compared(row(alone, c), result)));
    }
    return rows;
  }

  private SpotComparison row(SpotRanking.Alone alone, Cover cover) {
    MachineSpot spot = spots.get(alone.spot());
    var breaks = new ArrayList<String>();
    if (cover.uncovered() > 0) {
      breaks.add(cover.uncovered() + " places of work stay out of reach");
    }
    var needs = new ArrayList<>(spot.needs());
    double pipe = 0;
    for (int j : cover.options()) {
      LineOption option = model.options().get(j);
      pipe += option.ground().pipe();
      if (option.riser().isPresent()) {
        int end = option.highest() > option.from() ? option.highest() : option.lowest();
        pipe += option.pipeRises() ? Math.abs(model.ways().rise(option, end)) : 0;
        String what = option.pipeRises() ? "standpipe at " : "hose up at ";
        needs.add(what + risers.get(option.riser().get()).name());
      }
    }
    return new SpotComparison(
        spot,
        cover.cost(),
        alone.result().bound(),
        cover.uncovered(),
        longest(cover),
        Length.ofMetres(pipe),
        setUps(cover),
        breaks,
        needs);
  }

  private Length longest(Cover cover) {
    double most = 0;
    for (int k = 0; k < cover.floors().size(); k++) {
      Cover.FloorChoice choice = cover.floors().get(k);
      FloorClass on = model.floorClasses().get(k);
      for (int c = 0; c < choice.option().length; c++) {
        if (choice.option()[c] >= 0) {
          LineOption option = model.options().get(choice.option()[c]);
          double hose = model.problem().floors().get(k).hose()[choice.outlet()[c]][c];
          most = Math.max(most, model.ways().before(option, on.first(), on.outlets()) + hose);
        }
      }
    }
    return Length.ofMetres(most).plus(request.limits().whip());
  }

  private int setUps(Cover cover) {
    int n = 0;
    for (int k = 0; k < cover.floors().size(); k++) {
      Cover.FloorChoice choice = cover.floors().get(k);
      var seen = new HashSet<List<Integer>>();
      for (int c = 0; c < choice.option().length; c++) {
        if (choice.option()[c] >= 0) {
          seen.add(List.of(choice.option()[c], choice.outlet()[c]));
        }
      }
      n += seen.size() * model.floorClasses().get(k).floors().size();
    }
    return n;
  }
}
