package org.coatrun.shared.bid.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.coatrun.shared.bid.material.MaterialLine;
import org.coatrun.shared.rules.InspectionCount;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;

/**
 * Spreads deck readings over the decks of a floor: for each design thickness one spot in the middle
 * of each 1,000 ft2 or part of it, the decks laid one after the other.
 */
final class DeckSpots {

  private DeckSpots() {}

  /** The deck of each spot. */
  static List<MaterialLine> of(List<MaterialLine> decks) {
    Map<Length, List<MaterialLine>> byDesign =
        decks.stream()
            .collect(
                Collectors.groupingBy(MaterialLine::thickness, TreeMap::new, Collectors.toList()));
    return byDesign.values().stream().flatMap(same -> spots(same).stream()).toList();
  }

  static Area area(List<MaterialLine> decks) {
    return decks.stream().map(MaterialLine::area).reduce(Area.ZERO, Area::plus);
  }

  private static List<MaterialLine> spots(List<MaterialLine> decks) {
    Area all = area(decks);
    long spots = InspectionCount.groups(all);
    List<MaterialLine> chosen = new ArrayList<>();
    double passed = 0;
    int next = 0;
    for (MaterialLine deck : decks) {
      passed += deck.area().squareMetres();
      while (next < spots && (next + 0.5) / spots * all.squareMetres() <= passed) {
        chosen.add(deck);
        next++;
      }
    }
    return chosen;
  }
}
