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
  private final Map<Key, FloorCost> known = new HashMap<>();

  /**
   * @param outlets by option and floor, those that may be set up
   */
  Evaluator(SearchBasis basis, int[][][] outlets) {
    this.problem = basis.problem();
    this.penalty = basis.penalty();
    this.outlets = outlets;
  }

  private record Key(int floor, BitSet options) {}

  /** What can be set up on one floor: pairs of option and outlet, the cells that they can serve. */
  private record Places(List<int[]> places, int[] cells, OutletCosts costs) {}

  /** One floor: cost of outlets and hose, cells left out, and the choice. */
  private record FloorCost(double cost, int uncovered, Cover.FloorChoice choice, BitSet used) {}

  /**
   * A cover by some of the options, with what it counts for in the search.
   *
   * @param objective its cost and the penalty of uncovered cells
   * @param bound no choice of outlets for all these options comes below this
   */
  record Valued(Cover cover, double objective, double bound) {}

  /** Opens the options with good outlets, drops those that no floor uses, and counts up. */
  Valued value(BitSet options) {
    var floors = new ArrayList<FloorCost>();
    for (int f = 0; f < problem.floors().size(); f++) {
      floors.add(floor(f, serving(f, options)));
    }
    return valued(floors, 0);
  }

  /**
   * Opens the options with the best outlets, or with some and the proof that none come to less than
   * {@code cutoff}, as long as the budget lasts.
   */
  Valued exact(BitSet options, double cutoff, Budget budget) {
    double bound = once(options);
    var places = new ArrayList<Places>();
    var choices = new ArrayList<OutletChoice>();
    for (int f = 0; f < problem.floors().size(); f++) {
      places.add(places(f, serving(f, options)));
      choices.add(new OutletChoice(places.get(f).costs));
      int times = problem.floors().get(f).times();
      int out = problem.floors().get(f).cells() - places.get(f).cells.length;
      bound += times * out * penalty;
      choices.get(f).bounded((cutoff - bound) / times, budget);
      bound += times * choices.get(f).bound();
    }
    var floors = new ArrayList<FloorCost>();
    for (int f = 0; f < choices.size(); f++) {
      OutletChoice choice = choices.get(f);
      int times = problem.floors().get(f).times();
      double before = choice.bound();
      choice.settle(before + (cutoff - bound) / times, budget);
      bound += times * (choice.bound() - before);
      floors.add(floorCost(f, places.get(f), choice));
    }
    return valued(floors, bound);
  }

  private Valued valued(List<FloorCost> floors, double bound) {
    var used = new BitSet();
    double cost = 0;
    int uncovered = 0;
    for (int f = 0; f < floors.size(); f++) {
      int times = problem.floors().get(f).times();
      used.or(floors.get(f).used);
      cost += times * floors.get(f).cost;
      uncovered += times * floors.get(f).uncovered;
    }
    cost += once(used);
    List<Cover.FloorChoice> choices = floors.stream().map(FloorCost::choice).toList();
    var cover = new Cover(machines(used), used.stream().boxed().toList(), choices, uncovered, cost);
    return new Valued(cover, cost + uncovered * penalty, bound);
  }

  private List<Integer> machines(BitSet options) {
    var set = new TreeSet<Integer>();
    options.stream().forEach(j -> set.add(problem.options().get(j).machine()));
    return List.copyOf(set);
  }

  /** Machines and options, without outlets and hose. */
  private double once(BitSet options) {
    return machines(options).stream().mapToDouble(m -> problem.machineCost()[m]).sum()
        + options.stream().mapToDouble(j -> problem.options().get(j).fixed()).sum();
  }

  private BitSet serving(int f, BitSet options) {
    var serving = new BitSet();
    options.stream().filter(j -> problem.options().get(j).serves(f)).forEach(serving::set);
    return serving;
  }

  private FloorCost floor(int f, BitSet serving) {
    return known.computeIfAbsent(new Key(f, serving), k -> quick(f, serving));
  }

  private FloorCost quick(int f, BitSet serving) {
    Places places = places(f, serving);
    return floorCost(f, places, new OutletChoice(places.costs));
  }

  private Places places(int f, BitSet options) {
    var places = new ArrayList<int[]>();
    options.stream().forEach(j -> addOutlets(f, j, places));
    int[] cells = coverable(f, places);
    double[][] cost = new double[places.size()][cells.length];
    for (int i = 0; i < cost.length; i++) {
      CoverOption option = problem.options().get(places.get(i)[0]);
      for (int c = 0; c < cells.length; c++) {
        cost[i][c] = problem.cost(option, f, places.get(i)[1], cells[c]);
      }
    }
    double[] once =
        places.stream()
            .mapToDouble(p -> problem.options().get(p[0]).outletCost()[f][p[1]])
            .toArray();
    return new Places(places, cells, new OutletCosts(once, trunk(f, options, places), cost));
  }

  private FloorCost floorCost(int f, Places at, OutletChoice choice) {
    int all = problem.floors().get(f).cells();
    int[] option = new int[all];
    int[] outlet = new int[all];
    Arrays.fill(option, -1);
    Arrays.fill(outlet, -1);
    var used = new BitSet();
    for (int c = 0; c < at.cells.length; c++) {
      int best = choice.serving(c);
      option[at.cells[c]] = at.places.get(best)[0];
      outlet[at.cells[c]] = at.places.get(best)[1];
      used.set(at.places.get(best)[0]);
    }
    var floor = new Cover.FloorChoice(option, outlet);
    return new FloorCost(choice.cost(), all - at.cells.length, floor, used);
  }

  private void addOutlets(int f, int j, List<int[]> places) {
    for (int o : outlets[j][f]) {
      places.add(new int[] {j, o});
    }
  }

  /** The pipe of all these options side by side. */
  private Trunk trunk(int f, BitSet options, List<int[]> places) {
    int[] all = options.stream().toArray();
    List<Trunk> trunks =
        Arrays.stream(all).mapToObj(j -> problem.options().get(j).trunk().get(f)).toList();
    List<int[]> of =
        places.stream().map(p -> new int[] {Arrays.binarySearch(all, p[0]), p[1]}).toList();
    return Trunk.joined(trunks, of);
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
