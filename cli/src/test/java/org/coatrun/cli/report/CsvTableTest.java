package org.coatrun.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Checked against RFC 4180, section 2, and against what spreadsheets take for a formula. */
class CsvTableTest {

  private static final List<Column<String>> TEXT_AND_NUMBER =
      List.of(
          Column.of("text", text -> text),
          Column.of("number", text -> Rounded.plain(-1.5)),
          Column.of("empty", text -> null));

  @Test
  void endsLinesWithCarriageReturnAndLineFeed() throws IOException {
    assertThat(csv("plain")).isEqualTo("text,number,empty\r\nplain,-1.5,\r\n");
  }

  @Test
  void writesTheHeaderWhereThereAreNoRows() throws IOException {
    assertThat(csv()).isEqualTo("text,number,empty\r\n");
  }

  @Test
  void quotesCommasQuotesAndLineEnds() throws IOException {
    assertThat(csv("a,b", "say \"x\"", "two\nlines"))
        .isEqualTo(
            "text,number,empty\r\n\"a,b\",-1.5,\r\n\"say \"\"x\"\"\",-1.5,\r\n"
                + "\"two\nlines\",-1.5,\r\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"})
  void marksTextThatASpreadsheetWouldRun(String text) throws IOException {
    assertThat(csv(text)).contains("'" + text);
  }

  @Test
  void leavesNumbersAlone() throws IOException {
    assertThat(csv("x")).doesNotContain("'-1.5");
  }

  private static String csv(String... texts) throws IOException {
    StringWriter out = new StringWriter();
    CsvTable.write(out, TEXT_AND_NUMBER, List.of(texts));
    return out.toString();
  }
}
