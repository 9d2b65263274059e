package org.coatrun.cli.workbook;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.coatrun.cli.report.Table;
import org.coatrun.cli.spreadsheet.Cell;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.Style;

/** Tables of sums one under another, each with a last row that adds it up. */
final class SumSheet {

  private static final int GROUP_WIDTH = 28;
  private static final int NUMBER_WIDTH = 13;

  private final List<List<Cell>> rows = new ArrayList<>();
  private int widest;

  /** Begins with the mark of an invented listing, where there is one. */
  SumSheet(Optional<String> mark) {
    mark.ifPresent(text -> rows.add(List.of(Cell.text(text, Style.BOLD))));
  }

  /**
   * Adds a table.
   *
   * @param title above it
   * @param table whose first column names groups, and whose others hold numbers
   * @param sums what the last row must give, in the order of the columns
   */
  SumSheet add(String title, Table table, List<Object> sums) {
    if (!rows.isEmpty()) {
      rows.add(List.of());
    }
    rows.add(List.of(Cell.text(title, Style.TITLE)));
    rows.add(table.names().stream().map(n -> Cell.text(n, Style.HEAD)).toList());
    int first = rows.size() + 1;
    table.rows().forEach(row -> rows.add(numbers(row)));
    rows.add(sums(first, rows.size(), sums));
    widest = Math.max(widest, table.names().size());
    return this;
  }

  Sheet sheet(String name) {
    List<Integer> widths = new ArrayList<>();
    widths.add(GROUP_WIDTH);
    for (int i = 1; i < widest; i++) {
      widths.add(NUMBER_WIDTH);
    }
    List<List<Cell>> all = List.copyOf(rows);
    return new Sheet(name, widths, 0, false, () -> Stream.of(all).flatMap(List::stream));
  }

  private static List<Cell> numbers(List<Object> row) {
    List<Cell> cells = new ArrayList<>();
    for (Object value : row) {
      if (value instanceof BigDecimal number) {
        cells.add(Cell.number(number, Style.HUNDREDTH));
      } else if (value instanceof Integer number) {
        cells.add(Cell.number(number, Style.WHOLE));
      } else {
        cells.add(Cell.text(value.toString().isEmpty() ? "(none)" : value.toString()));
      }
    }
    return cells;
  }

  private static List<Cell> sums(int first, int last, List<Object> sums) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text("All", Style.SUM_TEXT));
    for (int i = 1; i < sums.size(); i++) {
      String column = Sheet.column(i + 1);
      boolean whole = sums.get(i) instanceof Integer;
      BigDecimal value =
          whole ? BigDecimal.valueOf((Integer) sums.get(i)) : (BigDecimal) sums.get(i);
      cells.add(
          last < first
              ? Cell.number(value, whole ? Style.SUM_WHOLE : Style.SUM_HUNDREDTH)
              : Cell.formula(
                  "SUM(" + column + first + ":" + column + last + ")",
                  value,
                  whole ? Style.SUM_WHOLE : Style.SUM_HUNDREDTH));
    }
    return cells;
  }
}
