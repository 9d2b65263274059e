package org.coatrun.shared.estimate;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.surface.Surfaces;

/**
 * The ledger of a building: one line for each of its members and decks, whatever became of it.
 *
 * @param members sorted by {@link Line#ORDER}
 * @param decks sorted by {@link Line#ORDER}
 * @param findings sorted, each once
 * @param surfaces what was measured, the frame and the places of its elements
 */
public record Takeoff(
    Building building,
    List<MemberLine> members,
    List<DeckLine> decks,
    List<Finding> findings,
    Surfaces surfaces) {

  /**
   * @throws IllegalArgumentException where an element of the building has no line, or more than one
   */
  public Takeoff {
    members = members.parallelStream().sorted(Line.ORDER).toList();
    decks = decks.stream().sorted(Line.ORDER).toList();
    findings = findings.stream().distinct().sorted().toList();
    requireEachOnce("member", building.members(), members);
    requireEachOnce("deck", building.decks(), decks);
  }

  /** The same with more findings. */
  public Takeoff with(List<Finding> more) {
    return more.isEmpty()
        ? this
        : new Takeoff(
            building,
            members,
            decks,
            Stream.concat(findings.stream(), more.stream()).toList(),
            surfaces);
  }

  /** The sum of all members. */
  public Totals memberTotals() {
    return Totals.of(members);
  }

  /** The sum of all decks. */
  public Totals deckTotals() {
    return Totals.of(decks);
  }

  /** Sums of the members, storey by storey from the lowest up; those without one last, under "". */
  public Map<String, Totals> membersByStorey() {
    return sums(members, Line::storeyName, new LinkedHashMap<>());
  }

  /** Sums of the members by designation of their section; those without one under "". */
  public Map<String, Totals> membersBySection() {
    return sums(members, line -> line.member().section().name(), new TreeMap<>());
  }

  /** Sums of the members by what they do in the frame. */
  public Map<String, Totals> membersByRole() {
    return sums(members, line -> line.member().role().name(), new TreeMap<>());
  }

  /** Sums of the decks, storey by storey from the lowest up; those without one last, under "". */
  public Map<String, Totals> decksByStorey() {
    return sums(decks, Line::storeyName, new LinkedHashMap<>());
  }

  /** The lines in groups; the groups come in the order of the map's kind. */
  public static <L extends Line> Map<String, List<L>> groups(
      Collection<L> lines, Function<L, String> key) {
    return lines.stream()
        .collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
  }

  private static <L extends Line> Map<String, Totals> sums(
      Collection<L> lines, Function<L, String> key, Map<String, Totals> into) {
    groups(lines, key).forEach((name, group) -> into.put(name, Totals.of(group)));
    return into;
  }

  private static void requireEachOnce(
      String kind, Collection<? extends Element> elements, Collection<? extends Line> lines) {
    Set<ElementId> open = new HashSet<>(2 * elements.size());
    elements.forEach(element -> open.add(element.id()));
    for (Line line : lines) {
      if (!open.remove(line.identity().id())) {
        throw new IllegalArgumentException(
            "a " + kind + " on two lines, or not of this building: " + line.identity());
      }
    }
    open.stream()
        .min(Comparator.naturalOrder())
        .ifPresent(
            id -> {
              throw new IllegalArgumentException("a " + kind + " without a line: " + id);
            });
  }
}
