package org.coatrun.shared.bid.material;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.shared.bid.RatedLine;

/**
 * The floors of a job in the order they are sprayed: those that the job names first, in its order,
 * then the others from the lowest up.
 *
 * @param floors each name once
 * @param unknown names of the job's order that no floor carries
 */
public record FloorOrder(List<WorkFloor> floors, List<String> unknown) {

  public FloorOrder {
    floors = List.copyOf(floors);
    unknown = List.copyOf(unknown);
  }

  /**
   * Puts floors in order.
   *
   * @param order names as the job states them; letter case does not count
   * @param floors of the building; of two with one name the first counts
   * @param lines whose working floors are added where the building does not name them
   */
  public static FloorOrder of(
      List<String> order, Collection<WorkFloor> floors, Collection<RatedLine> lines) {
    List<WorkFloor> rising = new ArrayList<>(byName(floors, lines).values());
    rising.sort(WorkFloor.ORDER);
    List<WorkFloor> sprayed = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    for (String name : order) {
      List<WorkFloor> named =
          rising.stream().filter(f -> f.name().equalsIgnoreCase(name.strip())).toList();
      if (named.isEmpty()) {
        unknown.add(name);
      }
      named.stream().filter(f -> !sprayed.contains(f)).forEach(sprayed::add);
    }
    rising.stream().filter(f -> !sprayed.contains(f)).forEach(sprayed::add);
    return new FloorOrder(sprayed, unknown);
  }

  private static Map<String, WorkFloor> byName(
      Collection<WorkFloor> floors, Collection<RatedLine> lines) {
    Map<String, WorkFloor> byName = new LinkedHashMap<>();
    floors.forEach(floor -> byName.putIfAbsent(floor.name(), floor));
    lines.stream()
        .map(line -> line.item().place().workingFloor())
        .forEach(name -> byName.computeIfAbsent(name, WorkFloor::named));
    return byName;
  }

  /** The names, in order. */
  public List<String> names() {
    return floors.stream().map(WorkFloor::name).toList();
  }
}
