package org.coatrun.cli.report;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coatrun.cli.console.Plain;

/** A table of text in columns, for the screen: the first columns to the left, numbers right. */
public final class TextTable {

  private static final int WIDEST = 40;
  private static final String GAP = "  ";

  private final int textColumns;
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * An empty table.
   *
   * @param textColumns how many columns, from the first, hold text; the rest hold numbers
   */
  public TextTable(int textColumns, String... header) {
    this.textColumns = textColumns;
    rows.add(List.of(header));
  }

  /** A row of cells; text from a model is made harmless and shortened. */
  public void row(String... cells) {
    rows.add(Arrays.stream(cells).map(Plain::text).map(TextTable::shorten).toList());
  }

  /** A row of dashes. */
  public void rule() {
    rows.add(List.of());
  }

  /** Whether it has no row but the header. */
  public boolean isEmpty() {
    return rows.size() == 1;
  }

  /** Prints all rows. */
  public void print(PrintWriter out) {
    int[] widths = widths();
    for (List<String> row : rows) {
      out.println(line(row, widths).stripTrailing());
    }
  }

  private int[] widths() {
    int[] widths = new int[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        widths[i] = Math.max(widths[i], length(row.get(i)));
      }
    }
    return widths;
  }

  private String line(List<String> row, int[] widths) {
    if (row.isEmpty()) {
      return "-".repeat(Arrays.stream(widths).sum() + GAP.length() * (widths.length - 1));
    }
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < row.size(); i++) {
      String blanks = " ".repeat(widths[i] - length(row.get(i)));
      line.append(i == 0 ? "" : GAP);
      line.append(i < textColumns ? row.get(i) + blanks : blanks + row.get(i));
    }
    return line.toString();
  }

  private static String shorten(String cell) {
    return length(cell) <= WIDEST
        ? cell
        : cell.substring(0, cell.offsetByCodePoints(0, WIDEST - 3)) + "...";
  }

  private static int length(String cell) {
    return cell.codePointCount(0, cell.length());
  }
}
