package org.coatrun.cli.report;

import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.List;

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
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
          .build();

  private CsvTable() {}

  /** Writes a header and a row for each of {@code items}. */
  public static <T> void write(Writer writer, List<Column<T>> columns, List<T> items)
      throws IOException {
    CsvSchema.Builder schema = CsvSchema.builder().setUseHeader(true).setLineSeparator("\r\n");
    columns.forEach(column -> schema.addColumn(column.name()));
    if (items.isEmpty()) {
      writer.write(String.join(",", columns.stream().map(Column::name).toList()) + "\r\n");
      return;
    }
    try (CsvGenerator csv = FORM.createGenerator(writer)) {
      csv.setSchema(schema.build());
      for (T item : items) {
        csv.writeStartArray();
        for (Column<T> column : columns) {
          cell(csv, column.value().apply(item));
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
      csv.writeNumber(number);
    } else {
      csv.writeObject(value);
    }
  }

  private static String harmless(String text) {
    return !text.isEmpty() && LEADS_A_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
