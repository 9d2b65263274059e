package org.coatrun.geometry.floor;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.coatrun.shared.model.Storey;

/** Names levels after the storeys of the model that they lie nearest to. */
final class LevelNames {

  /** A storey further away than this, in metres, lends no name. */
  private static final double NEAR = 1.5;

  private LevelNames() {}

  /** A name for each height, no two alike. */
  static List<String> of(List<Double> heights, List<Storey> storeys) {
    var names = new ArrayList<String>();
    Set<String> used = new HashSet<>();
    for (double z : heights) {
      String name = name(z, heights, storeys);
      for (int n = 2; !used.add(name); n++) {
        name = name(z, heights, storeys) + " (" + n + ")";
      }
      names.add(name);
    }
    return names;
  }

  private static String name(double z, List<Double> heights, List<Storey> storeys) {
    Storey best = nearest(z, storeys);
    if (best == null || best.name().isBlank()) {
      return String.format(Locale.ROOT, "Level at %.2f m", z);
    }
    double own = Math.abs(best.elevation().metres() - z);
    boolean taken =
        heights.stream().anyMatch(h -> h != z && Math.abs(best.elevation().metres() - h) < own);
    return taken
        ? String.format(Locale.ROOT, "%s %+.2f m", best.name(), z - best.elevation().metres())
        : best.name();
  }

  private static Storey nearest(double z, List<Storey> storeys) {
    Storey best = null;
    for (Storey s : storeys) {
      double off = Math.abs(s.elevation().metres() - z);
      if (off <= NEAR && (best == null || off < Math.abs(best.elevation().metres() - z))) {
        best = s;
      }
    }
    return best;
  }
}
