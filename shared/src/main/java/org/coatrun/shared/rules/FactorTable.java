package org.coatrun.shared.rules;

import java.util.Comparator;
import java.util.List;
import org.coatrun.shared.units.Length;

/**
 * Thickness by a section factor: linear between tested rows, never extrapolated (EN 13381-4
 * practice, common practice).
 *
 * @param rows by rising factor, at least one; factors in the table's own form and unit
 */
public record FactorTable(List<Row> rows) {

  /** One tested row. */
  public record Row(double factor, Length thickness) {
    public Row {
      if (!(factor > 0) || !Double.isFinite(factor) || !(thickness.metres() > 0)) {
        throw new IllegalArgumentException("a row needs a factor and a thickness above 0");
      }
    }
  }

  /** What a look-up gives. */
  public sealed interface Reading {

    /**
     * Within the tested range.
     *
     * @param lower row at or below the factor
     * @param upper row at or above the factor; the same as lower where a row is met
     */
    record Between(Length thickness, Row lower, Row upper) implements Reading {}

    /** Outside the tested range. */
    record Outside(double factor, Row nearest) implements Reading {}
  }

  private static final double SAME = 1e-9;

  /** Sorts the rows and refuses doubled factors. */
  public FactorTable {
    rows = rows.stream().sorted(Comparator.comparingDouble(Row::factor)).toList();
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("a table needs at least one row");
    }
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get(i).factor() - rows.get(i - 1).factor() <= SAME) {
        throw new IllegalArgumentException(
            "two rows for the factor " + Numbers.plain(rows.get(i).factor()));
      }
    }
  }

  /** The thickness at a factor. */
  public Reading at(double factor) {
    Row first = rows.get(0);
    Row last = rows.get(rows.size() - 1);
    if (factor < first.factor() - SAME || factor > last.factor() + SAME) {
      return new Reading.Outside(factor, factor < first.factor() ? first : last);
    }
    int upper = 0;
    while (rows.get(upper).factor() < factor - SAME) {
      upper++;
    }
    return rows.get(upper).factor() <= factor + SAME
        ? new Reading.Between(rows.get(upper).thickness(), rows.get(upper), rows.get(upper))
        : between(rows.get(upper - 1), rows.get(upper), factor);
  }

  private static Reading between(Row lower, Row upper, double factor) {
    return new Reading.Between(
        Interpolation.linear(
            lower.factor(), lower.thickness(), upper.factor(), upper.thickness(), factor),
        lower,
        upper);
  }
}
