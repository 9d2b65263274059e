package org.coatrun.cli.workbook;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.cli.report.Table;
import org.coatrun.cli.spreadsheet.Cell;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.Style;

/** A table as a sheet: names of columns on top, one row for each of its rows. */
final class TableSheet {

  private static final int NARROW = 12;
  private static final int WIDE = 24;
  private static final int SENTENCE = 60;
  private static final List<String> SENTENCES = List.of("reason", "finding", "remedy");
  private static final List<String> NAMES =
      List.of("guid", "name", "class", "covered_by", "evidence", "frame_reason", "file");

  private TableSheet() {}

  /**
   * The sheet of a table.
   *
   * @param name of the sheet
   * @param whole the file that holds all rows, to be named where a sheet cannot
   */
  static Sheet of(String name, Table table, String whole) {
    return new Sheet(
        name,
        table.names().stream().map(TableSheet::width).toList(),
        1,
        true,
        () -> Stream.of(head(table), body(table), rest(table, whole)).flatMap(s -> s));
  }

  private static Stream<List<Cell>> head(Table table) {
    return Stream.of(table.names().stream().map(n -> Cell.text(n, Style.HEAD)).toList());
  }

  /** As many rows as a sheet holds beside the names, and a last one where that is not all. */
  private static Stream<List<Cell>> body(Table table) {
    return table.rows().stream().limit(shown(table)).map(TableSheet::cells);
  }

  private static Stream<List<Cell>> rest(Table table, String whole) {
    int left = table.rows().size() - shown(table);
    return left == 0
        ? Stream.empty()
        : Stream.of(
            List.of(
                Cell.text(
                    left + " more rows do not fit on a sheet; " + whole + " holds all of them.",
                    Style.BOLD)));
  }

  private static int shown(Table table) {
    int room = Sheet.MOST_ROWS - 1;
    return table.rows().size() <= room ? table.rows().size() : room - 1;
  }

  static List<Cell> cells(List<Object> row) {
    List<Cell> cells = new ArrayList<>(row.size());
    row.forEach(value -> cells.add(cell(value)));
    return cells;
  }

  private static Cell cell(Object value) {
    if (value == null) {
      return Cell.blank();
    }
    if (value instanceof BigDecimal number) {
      return Cell.number(number, Style.PLAIN);
    }
    if (value instanceof Integer || value instanceof Long) {
      return Cell.number(((Number) value).longValue(), Style.PLAIN);
    }
    if (value instanceof Double number) {
      return Cell.number(number, Style.PLAIN);
    }
    String text = value.toString();
    return text.isEmpty() ? Cell.blank() : Cell.text(text);
  }

  private static int width(String column) {
    if (SENTENCES.contains(column)) {
      return SENTENCE;
    }
    return NAMES.contains(column) ? WIDE : NARROW;
  }
}
