package org.coatrun.cli.page;

import java.util.List;

/**
 * A column of the page.
 *
 * @param kind quantity by which numbers are put into units, or empty for text
 * @param group heading under which it stands beside a chosen element
 * @param members whether the member table shows it
 * @param decks whether the deck table shows it
 * @param sum whether its total means something
 * @param wide whether its text may run over several lines
 * @param filter whether elements can be chosen by its values
 * @param scale {@code category} or {@code sequence} where the view can be coloured by it, or empty
 * @param order the categories in their own order, where they have one
 */
public record PageColumn(
    String key,
    String label,
    String kind,
    String group,
    boolean members,
    boolean decks,
    boolean sum,
    boolean wide,
    boolean filter,
    String scale,
    List<String> order) {

  /** A column of text that both tables show. */
  public static PageColumn text(String key, String label) {
    return number(key, label, "");
  }

  /** A column of numbers of one kind that both tables show. */
  public static PageColumn number(String key, String label, String kind) {
    return new PageColumn(key, label, kind, "", true, true, false, false, false, "", List.of());
  }

  /** The same, under a heading beside a chosen element. */
  public PageColumn under(String heading) {
    return new PageColumn(
        key, label, kind, heading, members, decks, sum, wide, filter, scale, order);
  }

  /** The same, for members only. */
  public PageColumn membersOnly() {
    return new PageColumn(key, label, kind, group, true, false, sum, wide, filter, scale, order);
  }

  /** The same, shown beside a chosen element only. */
  public PageColumn detailOnly() {
    return new PageColumn(key, label, kind, group, false, false, sum, wide, filter, scale, order);
  }

  /** The same, with a total. */
  public PageColumn summed() {
    return new PageColumn(
        key, label, kind, group, members, decks, true, wide, filter, scale, order);
  }

  /** The same, with room for sentences. */
  public PageColumn sentences() {
    return new PageColumn(key, label, kind, group, members, decks, sum, true, filter, scale, order);
  }

  /** The same, and elements can be chosen by its values. */
  public PageColumn filtered() {
    return new PageColumn(key, label, kind, group, members, decks, sum, wide, true, scale, order);
  }

  /** The same, and the view can be coloured by its categories. */
  public PageColumn categories(String... inOrder) {
    return new PageColumn(
        key, label, kind, group, members, decks, sum, wide, filter, "category", List.of(inOrder));
  }

  /** The same, and the view can be coloured by its size. */
  public PageColumn sequence() {
    return new PageColumn(
        key, label, kind, group, members, decks, sum, wide, filter, "sequence", order);
  }
}
