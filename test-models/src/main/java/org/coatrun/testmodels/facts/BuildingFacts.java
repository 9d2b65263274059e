package org.coatrun.testmodels.facts;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The generator's own bookkeeping of one building.
 *
 * @param elements each element that was written, in the order of the file
 * @param records number of records in the file
 */
public record BuildingFacts(List<ElementFact> elements, int records) {
  public BuildingFacts {
    elements = List.copyOf(elements);
  }

  /** Counts elements by entity name. */
  public Map<String, Integer> byEntity() {
    return count(ElementFact::entity);
  }

  /** Counts elements by storey name. */
  public Map<String, Integer> byStorey() {
    return count(ElementFact::storey);
  }

  /** Counts members by section. */
  public Map<String, Integer> bySection() {
    Map<String, Integer> counts = new TreeMap<>(count(ElementFact::section));
    counts.remove("");
    return counts;
  }

  private Map<String, Integer> count(Function<ElementFact, String> by) {
    Map<String, Integer> counts = new TreeMap<>();
    elements.forEach(e -> counts.merge(by.apply(e), 1, Integer::sum));
    return counts;
  }

  /** Returns the elements that fit. */
  public List<ElementFact> where(Predicate<ElementFact> fits) {
    return elements.stream().filter(fits).toList();
  }

  /** Returns the one element with a mark. */
  public ElementFact withTag(String tag) {
    return elements.stream()
        .filter(e -> e.tag().equals(tag))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("No element has the mark " + tag));
  }
}
