package org.coatrun.cli.report;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A table of a result: the same columns and values in each kind of file.
 *
 * @param names of the columns
 * @param count of rows
 * @param rows texts, numbers, and null for empty cells; made anew each time
 */
public record Table(List<String> names, int count, Rows rows) {

  /** Gives the rows, so that long tables are not held in memory. */
  @FunctionalInterface
  public interface Rows {
    Stream<List<Object>> stream();
  }

  public Table {
    names = List.copyOf(names);
  }

  static <T> Table of(List<Column<T>> columns, List<T> items) {
    return new Table(
        columns.stream().map(Column::name).toList(),
        items.size(),
        () -> items.stream().map(item -> cells(columns, item)));
  }

  private static <T> List<Object> cells(List<Column<T>> columns, T item) {
    Object[] cells = new Object[columns.size()];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = columns.get(i).value().apply(item);
    }
    return Arrays.asList(cells);
  }
}
