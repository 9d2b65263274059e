package org.coatrun.shared.bid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.units.FireDuration;

/** Finds elements with fewer hours than what they carry (IBC 704.1 and footnotes of Table 601). */
final class SupportFindings {

  private final Building building;
  private final LoadPaths loads;

  SupportFindings(Building building, LoadPaths loads) {
    this.building = building;
    this.loads = loads;
  }

  /** One finding for each carrier, naming the highest rated of what it carries. */
  List<Finding> of(List<RatedLine> lines) {
    Map<ElementId, RatedLine> byId = new HashMap<>();
    lines.forEach(line -> byId.put(line.item().id(), line));
    List<Finding> findings = new ArrayList<>();
    for (RatedLine carrier : lines) {
      Optional<FireDuration> own = carrier.ruling().hours();
      if (own.isPresent() && carrier.item() instanceof CoatedMember) {
        highest(carrier, byId)
            .filter(load -> hours(load) > own.get().minutes() + 1e-6)
            .ifPresent(load -> findings.add(finding(carrier, load)));
      }
    }
    return findings;
  }

  private Optional<RatedLine> highest(RatedLine carrier, Map<ElementId, RatedLine> byId) {
    RatedLine most = null;
    for (ElementId id : loads.carriedBy(carrier.item().id())) {
      RatedLine load = byId.get(id);
      if (load != null && (most == null || hours(load) > hours(most))) {
        most = load;
      }
    }
    return Optional.ofNullable(most);
  }

  private static double hours(RatedLine line) {
    return line.ruling().hours().map(FireDuration::minutes).orElse(0.0);
  }

  private Finding finding(RatedLine carrier, RatedLine load) {
    Coated item = carrier.item();
    String name = item.called();
    String sentence =
        Character.toUpperCase(name.charAt(0))
            + name.substring(1)
            + " at "
            + Shown.hours(carrier.ruling().hours().orElseThrow())
            + " carries "
            + load.item().called()
            + " at "
            + Shown.hours(load.ruling().hours().orElseThrow())
            + ".";
    return new Finding(
        WorkFinding.SUPPORT_RATED_LOWER,
        building.fileName(item.id()),
        0,
        item.id().step(),
        item.guid(),
        sentence);
  }
}
