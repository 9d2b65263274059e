package org.coatrun.cli.spreadsheet;

import java.util.List;
import java.util.stream.Stream;

/**
 * A sheet of a workbook.
 *
 * @param name up to 31 characters, none of []:*?/\
 * @param widths of the columns, in characters
 * @param header number of the row of column names, from 1, above which nothing scrolls away; 0
 *     where there is none
 * @param filtered whether the columns under the header can be filtered
 * @param rows asked for once, from the top
 */
public record Sheet(String name, List<Integer> widths, int header, boolean filtered, Rows rows) {

  /** The rows that a sheet of the standard's programs can hold. */
  public static final int MOST_ROWS = 1_048_576;

  /** Gives the rows, so that a long sheet need not be held in memory. */
  @FunctionalInterface
  public interface Rows {
    Stream<List<Cell>> stream();
  }

  /**
   * @throws IllegalArgumentException where the name is not allowed
   */
  public Sheet {
    widths = List.copyOf(widths);
    if (!name.matches("[^\\[\\]:*?/\\\\]{1,31}")) {
      throw new IllegalArgumentException("no name for a sheet: " + name);
    }
  }

  /** The name of a cell, such as {@code B7}; both numbers from 1. */
  public static String cell(int row, int column) {
    return column(column) + row;
  }

  /** The letters of a column, from 1. */
  public static String column(int number) {
    StringBuilder letters = new StringBuilder();
    for (int n = number; n > 0; n = (n - 1) / 26) {
      letters.insert(0, (char) ('A' + (n - 1) % 26));
    }
    return letters.toString();
  }
}
