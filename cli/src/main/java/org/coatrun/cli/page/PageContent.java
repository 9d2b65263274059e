package org.coatrun.cli.page;

import java.util.List;
import java.util.Map;

/**
 * What a page shows. Numbers are SI; the page puts them into the reader's units by the kind of
 * their column.
 *
 * @param units {@code us} or {@code si}: what the page opens in
 * @param storeys names from the lowest up
 * @param columns what is known of elements, in the order it is shown
 * @param elements rows asked for once, one by one: a value for each column key; also {@code kind}
 *     (member, deck, slab, wall), {@code level} (storey index or absent), {@code covers} (three
 *     numbers each: what covers or -1, m², and 1 where it encases)
 * @param findings rows with code, severity, sentence, remedy and the element's index where there is
 *     one
 * @param line the material line with its floors and choices, or empty
 * @param basis rules and defaults used, and the cautions
 * @param caution the one sentence that is always in sight
 * @param rest sums of the members and decks that have no row of their own, by all that they can be
 *     filtered by, with {@code count}
 * @param lacks what the page lacks, for models above the stated size
 */
public record PageContent(
    String title,
    String summary,
    String units,
    List<String> storeys,
    List<PageColumn> columns,
    Iterable<Map<String, Object>> elements,
    List<PageColumn> findingColumns,
    List<Map<String, Object>> findings,
    Map<String, Object> line,
    List<PageProse> basis,
    String caution,
    List<Map<String, Object>> rest,
    List<String> lacks) {

  public PageContent {
    storeys = List.copyOf(storeys);
    columns = List.copyOf(columns);
    findingColumns = List.copyOf(findingColumns);
    findings = List.copyOf(findings);
    basis = List.copyOf(basis);
    rest = List.copyOf(rest);
    lacks = List.copyOf(lacks);
  }

  /** A heading and the lines under it. */
  public record PageProse(String title, List<String> lines) {}
}
