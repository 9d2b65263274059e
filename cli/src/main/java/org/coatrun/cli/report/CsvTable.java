package org.coatrun.cli.report;

import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.List;
import org.coatrun.cli.output.PlainNumber;

/**
 * Rows as CSV after RFC 4180, lines ended by CR LF.
 *
 * <p>Text from a model that a spreadsheet would take for a formula gets an apostrophe in front, as
 * spreadsheets themselves mark text.
 */
public final class CsvTable {

  private static final String LEADS_A_FORMULA = "=+-@\t\r\n";

  private static final CsvFactory FORM =
      CsvFactory.builder()
          .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
          .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
          .build();

  private CsvTable() {}

  /** Writes a header and a row for each of {@code items}. */
  public static <T> void write(Writer writer, List<Column<T>> columns, List<T> items)
      throws IOException {
    write(writer, Table.of(columns, items));
  }

  /** Writes a header and the rows of {@code table}. */
  public static void write(Writer writer, Table table) throws IOException {
    CsvSchema.Builder schema = CsvSchema.builder().setUseHeader(true).setLineSeparator("\r\n");
    table.names().forEach(schema::addColumn);
    if (table.rows().isEmpty()) {
      writer.write(String.join(",", table.names()) + "\r\n");
      return;
    }
    try (CsvGenerator csv = FORM.createGenerator(writer)) {
      csv.setSchema(schema.build());
      for (List<Object> row : table.rows()) {
        csv.writeStartArray();
        for (Object cell : row) {
          cell(csv, cell);
        }
        csv.writeEndArray();
      }
    }
  }

  private static void cell(CsvGenerator csv, Object value) throws IOException {
    if (value == null) {
      csv.writeNull();
    } else if (value instanceof String text) {
      csv.writeString(harmless(text));
    } else if (value instanceof BigDecimal number) {
      csv.writeNumber(PlainNumber.of(number));
    } else {
      csv.writeObject(value);
    }
  }

  private static String harmless(String text) {
    return !text.isEmpty() && LEADS_A_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
