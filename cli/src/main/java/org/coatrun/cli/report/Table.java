package org.coatrun.cli.report;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A table of a result: the same columns and values in each kind of file, worked out once.
 *
 * @param names of the columns
 * @param rows texts, numbers, and null for empty cells
 */
public record Table(List<String> names, List<List<Object>> rows) {

  /** Fewer are not worth several threads. */
  private static final int MANY = 1000;

  public Table {
    names = List.copyOf(names);
    rows = List.copyOf(rows);
  }

  static <T> Table of(List<Column<T>> columns, List<T> items) {
    Stream<T> each = items.size() < MANY ? items.stream() : items.parallelStream();
    return new Table(
        columns.stream().map(Column::name).toList(),
        each.map(item -> cells(columns, item)).toList());
  }

  private static <T> List<Object> cells(List<Column<T>> columns, T item) {
    Object[] cells = new Object[columns.size()];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = columns.get(i).value().apply(item);
    }
    return Arrays.asList(cells);
  }
}
