package org.coatrun.cli.report;

import java.util.List;
import org.coatrun.shared.finding.Finding;

/** The columns of findings.csv. */
public final class FindingColumns {

  /** In this order. */
  public static final List<Column<Finding>> ALL =
      List.of(
          Column.of("code", finding -> finding.code().code()),
          Column.of("severity", finding -> Words.of(finding.code().severity())),
          Column.of("file", Finding::file),
          Column.of("line", finding -> orNull(finding.line())),
          Column.of("step", finding -> orNull(finding.step())),
          Column.of("guid", Finding::guid),
          Column.of("finding", Finding::sentence),
          Column.of("remedy", finding -> finding.code().remedy()));

  private FindingColumns() {}

  private static Long orNull(long number) {
    return number == 0 ? null : Long.valueOf(number);
  }
}
