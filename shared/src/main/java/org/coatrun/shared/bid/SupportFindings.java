package org.coatrun.shared.bid;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.units.FireDuration;

/**
 * Finds elements with fewer hours than what they carry, themselves or through others (IBC 704.1 and
 * footnotes of Table 601).
 */
final class SupportFindings {

  /**
   * What an element carries that is rated highest.
   *
   * @param on the element that rests on the carrier and carries the load, or the load itself
   */
  private record Load(RatedLine line, RatedLine on) {}

  private final Building building;
  private final LoadPaths loads;

  SupportFindings(Building building, LoadPaths loads) {
    this.building = building;
    this.loads = loads;
  }

  /** One finding for each carrier, naming the highest rated of what it carries. */
  List<Finding> of(List<RatedLine> lines) {
    Map<ElementId, RatedLine> byId = new LinkedHashMap<>();
    lines.forEach(line -> byId.put(line.item().id(), line));
    Map<ElementId, Load> highest = highest(byId);
    List<Finding> findings = new ArrayList<>();
    for (RatedLine carrier : byId.values()) {
      Load load = highest.get(carrier.item().id());
      boolean rated = carrier.ruling().hours().isPresent();
      if (load != null
          && rated
          && carrier.item() instanceof CoatedMember
          && hours(load.line()) > hours(carrier) + 1e-6) {
        findings.add(finding(carrier, load));
      }
    }
    return findings;
  }

  /** Goes down from the highest rated first, so that the first load to reach a carrier stands. */
  private Map<ElementId, Load> highest(Map<ElementId, RatedLine> byId) {
    Map<ElementId, Load> highest = new HashMap<>();
    Set<ElementId> done = new HashSet<>();
    byId.values().stream()
        .sorted(Comparator.comparingDouble(SupportFindings::hours).reversed())
        .forEach(line -> goDown(line, byId, highest, done));
    return highest;
  }

  private void goDown(
      RatedLine load,
      Map<ElementId, RatedLine> byId,
      Map<ElementId, Load> highest,
      Set<ElementId> done) {
    Deque<ElementId> open = new ArrayDeque<>();
    open.add(load.item().id());
    while (!open.isEmpty()) {
      ElementId at = open.remove();
      if (!done.add(at)) {
        continue;
      }
      for (ElementId carrier : loads.carriersOf(at)) {
        highest.putIfAbsent(carrier, new Load(load, byId.getOrDefault(at, load)));
        open.add(carrier);
      }
    }
  }

  private static double hours(RatedLine line) {
    return line.ruling().hours().map(FireDuration::minutes).orElse(0.0);
  }

  private Finding finding(RatedLine carrier, Load load) {
    Coated item = carrier.item();
    String name = item.called();
    boolean itself = load.on().item().id().equals(load.line().item().id());
    String sentence =
        Character.toUpperCase(name.charAt(0))
            + name.substring(1)
            + " at "
            + Shown.hours(carrier.ruling().hours().orElseThrow())
            + " carries "
            + load.line().item().called()
            + " at "
            + Shown.hours(load.line().ruling().hours().orElseThrow())
            + (itself ? "." : " through " + load.on().item().called() + ".");
    return new Finding(
        WorkFinding.SUPPORT_RATED_LOWER,
        building.fileName(item.id()),
        0,
        item.id().step(),
        item.guid(),
        sentence);
  }
}
