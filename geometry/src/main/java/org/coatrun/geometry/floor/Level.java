package org.coatrun.geometry.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.locationtech.jts.geom.Geometry;

/**
 * Tops at one height, whatever storey the model puts them on.
 *
 * @param z where most of them lie
 */
record Level(double z, List<Top> tops) {

  private static final double GRAIN = 0.01;

  Level {
    tops = List.copyOf(tops);
  }

  /** A level of these tops, at the height where most of them lie; at least one top. */
  static Level of(List<Top> tops) {
    return new Level(seed(tops), tops);
  }

  boolean isAssumed() {
    return tops.stream().allMatch(t -> t.kind() == Top.Kind.ASSUMED);
  }

  Geometry region() {
    return Plan.union(tops.stream().map(Top::region).toList());
  }

  /** Underside of what carries here, by area in the middle. */
  double under() {
    double area = Top.area(tops);
    double sum = 0;
    for (Top t : tops) {
      sum += t.area() * Math.max(t.under(), t.z() - 1);
    }
    return area > 0 ? sum / area : z;
  }

  /**
   * Tops gathered by height, from the lowest up: the height with most area takes all within reach,
   * then the next. Concrete fill alone makes no level.
   */
  static List<Level> gather(List<Top> tops, double reach) {
    var left = new ArrayList<>(tops);
    var levels = new ArrayList<Level>();
    while (left.stream().anyMatch(t -> t.kind() != Top.Kind.FILL)) {
      double seed = seed(left);
      List<Top> here = left.stream().filter(t -> Math.abs(t.z() - seed) <= reach).toList();
      left.removeAll(here);
      levels.add(new Level(seed, here));
    }
    levels.sort(Comparator.comparingDouble(Level::z));
    return levels;
  }

  /** The height with most area; of equals the higher one. Fill counts where deck is near. */
  private static double seed(List<Top> tops) {
    var areas = new TreeMap<Long, Double>();
    for (Top t : tops) {
      if (t.kind() != Top.Kind.FILL || tops.stream().anyMatch(d -> carries(d, t))) {
        areas.merge(Math.round(t.z() / GRAIN), t.area(), Double::sum);
      }
    }
    if (areas.isEmpty()) {
      return tops.get(0).z();
    }
    long best = areas.firstKey();
    for (long z : areas.keySet()) {
      best = areas.get(z) >= areas.get(best) - 1e-6 ? z : best;
    }
    double highest = Double.NEGATIVE_INFINITY;
    for (Top t : tops) {
      highest = Math.round(t.z() / GRAIN) == best ? Math.max(highest, t.z()) : highest;
    }
    return highest;
  }

  private static boolean carries(Top deck, Top fill) {
    return deck.kind() == Top.Kind.BARE_DECK
        && fill.z() >= deck.z() - 0.05
        && fill.z() - deck.z() < 0.3;
  }
}
