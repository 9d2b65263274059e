package org.coatrun.cli.page;

/**
 * How much one page shows one by one, so that a browser stays quick and the file small. What is
 * above is in the page's totals, and the page says what it left out.
 *
 * @param elements members and decks
 * @param surroundings slabs and walls
 * @param triangles of all bodies together, before some become plain boxes
 * @param findings in the list
 */
public record PageLimits(int elements, int surroundings, int triangles, int findings) {

  /**
   * A full picture of two and a half million triangles takes a browser that draws without a
   * graphics card about a second on two cores; boxes stand in for members while the view moves.
   */
  public static final PageLimits DEFAULT = new PageLimits(30_000, 10_000, 2_500_000, 5_000);

  public PageLimits {
    if (elements < 1 || surroundings < 0 || triangles < 0 || findings < 0) {
      throw new IllegalArgumentException("a page without room for an element");
    }
  }
}
