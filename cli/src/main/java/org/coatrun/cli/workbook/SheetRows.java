package org.coatrun.cli.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.coatrun.cli.spreadsheet.Cell;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.Style;

/** The rows of a short sheet, put together from the top; rows and columns count from 1. */
final class SheetRows {

  private final String name;
  private final List<List<Cell>> rows = new ArrayList<>();

  SheetRows(String name) {
    this.name = name;
  }

  /** Begins with the mark of an invented listing, where there is one. */
  SheetRows(String name, Optional<String> mark) {
    this(name);
    mark.ifPresent(text -> add(Cell.text(text, Style.BOLD)));
  }

  /** Adds a row and gives its number. */
  int add(Cell... cells) {
    return add(List.of(cells));
  }

  /** Adds a row and gives its number. */
  int add(List<Cell> cells) {
    rows.add(List.copyOf(cells));
    return rows.size();
  }

  /** Adds a title, with an empty row above it where something stands there. */
  void title(String text) {
    if (!rows.isEmpty()) {
      add();
    }
    add(Cell.text(text, Style.TITLE));
  }

  /** Adds the names of columns. */
  void head(String... names) {
    add(Stream.of(names).map(n -> Cell.text(n, Style.HEAD)).toList());
  }

  /** The number of the row that comes next. */
  int next() {
    return rows.size() + 1;
  }

  /** A cell of this sheet as other sheets name it; it stays the same wherever it is copied. */
  String reference(int row, int column) {
    return "'" + name + "'!$" + Sheet.column(column) + "$" + row;
  }

  /** The sum of a column from one row to another, or 0 where there are none. */
  static String sum(int column, int first, int last) {
    String letters = Sheet.column(column);
    return last < first ? "0" : "SUM(" + letters + first + ":" + letters + last + ")";
  }

  Sheet sheet(Integer... widths) {
    List<List<Cell>> all = List.copyOf(rows);
    return new Sheet(name, List.of(widths), 0, false, () -> Stream.of(all).flatMap(List::stream));
  }
}
