package org.coatrun.shared.bid.material;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.Thickness;
import org.coatrun.shared.job.Job;

/**
 * The material of a job, line by line. Every sum is a sum of these lines and nothing else.
 *
 * @param lines elements that have a thickness, in the order they were given
 * @param withoutThickness elements that must be coated and have no thickness: they are in no sum
 * @param floors in the order they are sprayed
 */
public record MaterialBill(
    List<MaterialLine> lines, List<RatedLine> withoutThickness, List<WorkFloor> floors) {

  public MaterialBill {
    lines = List.copyOf(lines);
    withoutThickness = List.copyOf(withoutThickness);
    floors = List.copyOf(floors);
  }

  /** The bill of rated lines. */
  public static MaterialBill of(Collection<RatedLine> lines, Job job, FloorOrder order) {
    MaterialCount count = new MaterialCount(job);
    return new MaterialBill(
        lines.stream().flatMap(line -> count.of(line).stream()).toList(),
        lines.stream().filter(l -> l.thickness() instanceof Thickness.Missing).toList(),
        order.floors());
  }

  /** Elements to be sprayed; one that is sprayed from several floors counts once. */
  public int elements() {
    return (int) lines.stream().map(line -> line.item().id()).distinct().count();
  }

  /** Elements that must be coated and have no thickness, each once. */
  public int elementsWithoutThickness() {
    return (int) withoutThickness.stream().map(line -> line.item().id()).distinct().count();
  }

  /** The sum of all lines. */
  public MaterialSum total() {
    return MaterialSum.of(lines);
  }

  /** Sums by working floor, in the order they are sprayed; floors without work have zeros. */
  public Map<String, MaterialSum> byFloor() {
    Map<String, List<MaterialLine>> groups = groups(MaterialLine::floor);
    Map<String, MaterialSum> sums = new LinkedHashMap<>();
    for (WorkFloor floor : floors) {
      sums.put(floor.name(), MaterialSum.of(groups.getOrDefault(floor.name(), List.of())));
    }
    return sums;
  }

  /** Sums by designation of the section. */
  public Map<String, MaterialSum> bySection() {
    return by(MaterialLine::section);
  }

  /** Sums by what elements do in the frame. */
  public Map<String, MaterialSum> byRole() {
    return by(MaterialLine::role);
  }

  /** Sums by the rule or row that decided the hours. */
  public Map<String, MaterialSum> byRule() {
    return by(MaterialLine::rule);
  }

  /** Sums by kind of work. */
  public Map<String, MaterialSum> byKind() {
    return by(line -> line.kind().word());
  }

  /** Sums by any name that a line has, sorted by it. */
  public Map<String, MaterialSum> by(Function<MaterialLine, String> name) {
    Map<String, MaterialSum> sums = new TreeMap<>();
    groups(name).forEach((key, group) -> sums.put(key, MaterialSum.of(group)));
    return sums;
  }

  private Map<String, List<MaterialLine>> groups(Function<MaterialLine, String> name) {
    return lines.stream().collect(Collectors.groupingBy(name));
  }
}
