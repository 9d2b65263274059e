package org.coatrun.cli.report;

import java.util.function.Function;

/**
 * One column of a result, the same in CSV and JSON.
 *
 * @param name as it stands in the header
 * @param value text, number, or null for an empty cell
 */
public record Column<T>(String name, Function<T, Object> value) {

  /** A column by its name. */
  public static <T> Column<T> of(String name, Function<T, Object> value) {
    return new Column<>(name, value);
  }
}
