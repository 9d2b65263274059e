package org.coatrun.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.coatrun.cli.report.Table;
import org.coatrun.cli.spreadsheet.Cell;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.Style;
import org.junit.jupiter.api.Test;

class TableSheetTest {

  @Test
  void keepsNumbersNumbersAndTextText() {
    List<Object> row = Arrays.asList("=1+1", new BigDecimal("2.5"), 3, 4L, null, "");
    Table table = new Table(List.of("a", "b", "c", "d", "e", "f"), List.of(row));
    List<List<Cell>> rows = TableSheet.of("T", table, "t.csv").rows().stream().toList();

    assertThat(rows).hasSize(2);
    assertThat(rows.get(0).get(0)).isEqualTo(Cell.text("a", Style.HEAD));
    assertThat(rows.get(1))
        .containsExactly(
            Cell.text("=1+1"),
            Cell.number(new BigDecimal("2.5"), Style.PLAIN),
            Cell.number(3, Style.PLAIN),
            Cell.number(4, Style.PLAIN),
            Cell.blank(),
            Cell.blank());
  }

  /** ECMA-376 programs hold 1,048,576 rows: names, 1,048,575 lines. */
  @Test
  void aTableThatJustFitsIsWhole() {
    assertThat(rows(Sheet.MOST_ROWS - 1)).isEqualTo(Sheet.MOST_ROWS);
    assertThat(last(Sheet.MOST_ROWS - 1)).isEqualTo(Cell.number(1_048_574, Style.PLAIN));
  }

  @Test
  void aLongerTableSaysWhatIsLeftOut() {
    assertThat(rows(Sheet.MOST_ROWS + 5)).isEqualTo(Sheet.MOST_ROWS);
    assertThat(last(Sheet.MOST_ROWS + 5))
        .isEqualTo(
            Cell.text("7 more rows do not fit on a sheet; t.csv holds all of them.", Style.BOLD));
  }

  private static long rows(int count) {
    return numbered(count).rows().stream().count();
  }

  private static Cell last(int count) {
    return numbered(count).rows().stream().reduce((a, b) -> b).orElseThrow().get(0);
  }

  private static Sheet numbered(int count) {
    Table table =
        new Table(
            List.of("n"), IntStream.range(0, count).mapToObj(n -> List.<Object>of(n)).toList());
    return TableSheet.of("T", table, "t.csv");
  }
}
