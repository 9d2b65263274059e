package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What has no row of its own, summed by all that a list can be filtered by, so that totals stay
 * whole whatever is filtered.
 */
final class RestRows {

  private final List<String> keys;
  private final List<String> sums;
  private final Map<List<Object>, Map<String, Object>> groups = new LinkedHashMap<>();

  RestRows(List<PageColumn> columns) {
    keys =
        Stream.concat(
                Stream.of("kind", "level"),
                columns.stream()
                    .filter(c -> c.filter() || c.scale().equals("category"))
                    .map(PageColumn::key))
            .toList();
    sums = columns.stream().filter(PageColumn::sum).map(PageColumn::key).toList();
  }

  /** Adds the row of an element. */
  void add(Map<String, Object> row) {
    List<Object> key = new ArrayList<>();
    keys.forEach(k -> key.add(row.get(k)));
    Map<String, Object> group = groups.computeIfAbsent(key, k -> start(row));
    group.merge("count", 1, (a, b) -> (Integer) a + (Integer) b);
    for (String sum : sums) {
      if (row.get(sum) instanceof Number more) {
        group.merge(sum, more.doubleValue(), (a, b) -> (Double) a + (Double) b);
      }
    }
  }

  private Map<String, Object> start(Map<String, Object> row) {
    Map<String, Object> group = new LinkedHashMap<>();
    keys.stream().filter(row::containsKey).forEach(k -> group.put(k, row.get(k)));
    return group;
  }

  /** The sums with how many they are of, in the order in which they came up. */
  List<Map<String, Object>> groups() {
    return List.copyOf(groups.values());
  }
}
