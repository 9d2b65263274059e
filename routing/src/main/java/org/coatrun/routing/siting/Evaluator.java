package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** What a set of opened options costs, with the outlets chosen floor by floor; remembers floors. */
final class Evaluator {

  private final CoverProblem problem;
  private final int[][][] outlets;
  private final double penalty;
  private final int outletNodes;
  private final Map<Key, FloorCost> known = new HashMap<>();

  /**
   * @param outlets by option and floor, those that may be set up
   */
  Evaluator(SearchBasis basis, int[][][] outlets, int outletNodes) {
    this.problem = basis.problem();
    this.penalty = basis.penalty();
    this.outlets = outlets;
    this.outletNodes = outletNodes;
  }

  private record Key(int floor, BitSet options, boolean exact) {}

  /** One floor: cost and bound of outlets and hose, cells left out, and the choice. */
  private record FloorCost(
      double cost, double bound, int uncovered, Cover.FloorChoice choice, BitSet used) {}

  /**
   * A cover by some of the options, with what it counts for in the search.
   *
   * @param objective its cost and the penalty of uncovered cells
   * @param bound no choice of outlets for all these options comes below this
   */
  record Valued(Cover cover, double objective, double bound) {}

  /** Opens the options, drops those that no floor uses, and counts up. */
  Valued value(BitSet options, boolean exact) {
    var used = new BitSet();
    double bound = options.stream().mapToDouble(j -> problem.options().get(j).fixed()).sum();
    bound += machineCost(options);
    double cost = 0;
    int uncovered = 0;
    var choices = new ArrayList<Cover.FloorChoice>();
    for (int f = 0; f < problem.floors().size(); f++) {
      FloorCost floor = floor(f, options, exact);
      int times = problem.floors().get(f).times();
      used.or(floor.used);
      choices.add(floor.choice);
      cost += times * floor.cost;
      bound += times * (floor.bound + floor.uncovered * penalty);
      uncovered += times * floor.uncovered;
    }
    cost += machineCost(used);
    cost += used.stream().mapToDouble(j -> problem.options().get(j).fixed()).sum();
    var cover = new Cover(machines(used), used.stream().boxed().toList(), choices, uncovered, cost);
    return new Valued(cover, cost + uncovered * penalty, bound);
  }

  private List<Integer> machines(BitSet options) {
    var set = new TreeSet<Integer>();
    options.stream().forEach(j -> set.add(problem.options().get(j).machine()));
    return List.copyOf(set);
  }

  private double machineCost(BitSet options) {
    return machines(options).stream().mapToDouble(m -> problem.machineCost()[m]).sum();
  }

  private FloorCost floor(int f, BitSet options, boolean exact) {
    var serving = new BitSet();
    options.stream().filter(j -> problem.options().get(j).serves(f)).forEach(serving::set);
    return known.computeIfAbsent(new Key(f, serving, exact), k -> choose(f, serving, exact));
  }

  private FloorCost choose(int f, BitSet options, boolean exact) {
    var places = new ArrayList<int[]>();
    var fixed = new ArrayList<Double>();
    options.stream().forEach(j -> addOutlets(f, j, places, fixed));
    int[] cells = coverable(f, places);
    double[][] cost = new double[places.size()][cells.length];
    for (int i = 0; i < cost.length; i++) {
      CoverOption option = problem.options().get(places.get(i)[0]);
      for (int c = 0; c < cells.length; c++) {
        cost[i][c] = problem.cost(option, f, places.get(i)[1], cells[c]);
      }
    }
    double[] once = fixed.stream().mapToDouble(Double::doubleValue).toArray();
    var choice = OutletChoice.solve(once, cost, exact ? outletNodes : 1);
    return floorCost(f, places, cells, cost, choice);
  }

  private FloorCost floorCost(
      int f, List<int[]> places, int[] cells, double[][] cost, OutletChoice.Choice choice) {
    int all = problem.floors().get(f).cells();
    int[] option = new int[all];
    int[] outlet = new int[all];
    Arrays.fill(option, -1);
    Arrays.fill(outlet, -1);
    var used = new BitSet();
    for (int c = 0; c < cells.length; c++) {
      int best = -1;
      for (int i = 0; i < places.size(); i++) {
        if (choice.outlets()[i] && (best < 0 || cost[i][c] < cost[best][c])) {
          best = i;
        }
      }
      option[cells[c]] = places.get(best)[0];
      outlet[cells[c]] = places.get(best)[1];
      used.set(places.get(best)[0]);
    }
    return new FloorCost(
        choice.cost(),
        choice.bound(),
        all - cells.length,
        new Cover.FloorChoice(option, outlet),
        used);
  }

  private void addOutlets(int f, int j, List<int[]> places, List<Double> fixed) {
    for (int o : outlets[j][f]) {
      places.add(new int[] {j, o});
      fixed.add(problem.options().get(j).outletCost()[f][o]);
    }
  }

  private int[] coverable(int f, List<int[]> places) {
    var cells = new ArrayList<Integer>();
    for (int c = 0; c < problem.floors().get(f).cells(); c++) {
      int cell = c;
      if (places.stream()
          .anyMatch(
              p -> Double.isFinite(problem.cost(problem.options().get(p[0]), f, p[1], cell)))) {
        cells.add(c);
      }
    }
    return cells.stream().mapToInt(Integer::intValue).toArray();
  }
}
