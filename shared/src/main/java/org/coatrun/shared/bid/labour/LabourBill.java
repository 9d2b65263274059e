package org.coatrun.shared.bid.labour;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.coatrun.shared.bid.material.Grid;
import org.coatrun.shared.bid.material.MaterialBill;
import org.coatrun.shared.bid.material.MaterialOrder;
import org.coatrun.shared.bid.material.MaterialSum;
import org.coatrun.shared.bid.material.WorkFloor;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.job.Labour;
import org.coatrun.shared.rules.Bags;

/**
 * The labour of a job.
 *
 * @param lines one for each line of material, in its order
 * @param byFloor in the order they are sprayed; floors without work have no set-up
 */
public record LabourBill(Labour basis, List<LabourLine> lines, Map<String, LabourSum> byFloor) {

  public LabourBill {
    lines = List.copyOf(lines);
    byFloor = Collections.unmodifiableMap(new LinkedHashMap<>(byFloor));
  }

  /** The labour of a bill of material. */
  public static LabourBill of(MaterialBill material, Job job) {
    List<LabourLine> lines =
        material.lines().stream().map(line -> LabourLine.of(line, job.labour())).toList();
    Map<String, List<LabourLine>> groups =
        lines.stream().collect(Collectors.groupingBy(LabourLine::floor));
    Map<String, LabourSum> floors = new LinkedHashMap<>();
    for (WorkFloor floor : material.floors()) {
      floors.put(floor.name(), floor(groups.getOrDefault(floor.name(), List.of()), job));
    }
    return new LabourBill(job.labour(), lines, floors);
  }

  private static LabourSum floor(Collection<LabourLine> lines, Job job) {
    if (lines.isEmpty()) {
      return LabourSum.NONE;
    }
    double spraying = hours(lines);
    return new LabourSum(
        spraying,
        Grid.of(Math.max(0, machineHours(lines, job) - spraying)),
        Grid.of(job.labour().perFloor()),
        Grid.of(spraying * job.labour().patching().fraction()),
        hours(lines.stream().filter(l -> l.reach().lifted()).toList()));
  }

  /** Hours that one machine takes for the bags of the lines. */
  private static double machineHours(Collection<LabourLine> lines, Job job) {
    MaterialSum sum = MaterialSum.of(lines.stream().map(LabourLine::material).toList());
    return MaterialOrder.of(sum, job.material()).exactBags() / job.machine().rate();
  }

  private static double hours(Collection<LabourLine> lines) {
    return lines.stream().mapToDouble(LabourLine::crewHours).sum();
  }

  /** All floors together. */
  public LabourSum total() {
    return byFloor.values().stream().reduce(LabourSum.NONE, LabourSum::plus);
  }

  /** Hours of all people of the crew. */
  public double personHours() {
    return total().crewHours() * basis.crew();
  }

  /** Days of lift or scaffold: on each floor, hours that take one over the shift, made whole. */
  public long liftDays() {
    return byFloor.values().stream()
        .mapToLong(floor -> Bags.whole(floor.byLift() / basis.shift()))
        .sum();
  }

  /** Crew hours of spraying by kind of work. */
  public Map<String, Double> sprayingByKind() {
    return spraying(line -> line.material().kind().word());
  }

  /** Crew hours of spraying by what elements do in the frame. */
  public Map<String, Double> sprayingByRole() {
    return spraying(line -> line.material().role());
  }

  /** Crew hours of spraying by how the crew reaches the steel. */
  public Map<String, Double> sprayingByAccess() {
    return spraying(line -> AccessWords.of(line.reach().access()));
  }

  /** Crew hours of spraying by any name that a line has, sorted by it. */
  public Map<String, Double> spraying(Function<LabourLine, String> name) {
    return lines.stream()
        .collect(
            Collectors.groupingBy(
                name, TreeMap::new, Collectors.summingDouble(LabourLine::crewHours)));
  }
}
