package org.coatrun.cli.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.io.SerializedString;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import org.coatrun.cli.output.PlainNumber;
import org.coatrun.cli.output.Repeated;

/**
 * Lists of a result in JSON: the same columns as in CSV. What is not known of a row, or does not
 * apply to it, is left out of its object.
 */
public final class JsonRows {

  /**
   * How results are written: numbers without exponents; what they are written to is neither closed
   * nor flushed, which is up to whom it belongs to.
   */
  public static final JsonFactory FORM =
      JsonFactory.builder()
          .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
          .disable(StreamWriteFeature.FLUSH_PASSED_TO_STREAM)
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .build();

  private JsonRows() {}

  /** A list of texts. */
  public static void strings(JsonGenerator json, String name, List<String> texts)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }

  /** A list of objects, a field for each column that has a value. */
  public static <T> void rows(
      JsonGenerator json, String name, List<Column<T>> columns, List<T> items) throws IOException {
    rows(json, name, Table.of(columns, items));
  }

  /** The rows of a table as a list of objects. */
  static void rows(JsonGenerator json, String name, Table table) throws IOException {
    List<SerializedString> names = table.names().stream().map(SerializedString::new).toList();
    List<Repeated<String, SerializedString>> texts =
        names.stream().map(n -> new Repeated<>(SerializedString::new)).toList();
    json.writeArrayFieldStart(name);
    for (List<Object> row : table.rows()) {
      json.writeStartObject();
      for (int i = 0; i < names.size(); i++) {
        Object value = row.get(i);
        field(json, names.get(i), value instanceof String text ? texts.get(i).of(text) : value);
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** The columns of one item as fields of the object that is open. */
  public static <T> void fields(JsonGenerator json, List<Column<T>> columns, T item)
      throws IOException {
    for (Column<T> column : columns) {
      field(json, new SerializedString(column.name()), column.value().apply(item));
    }
  }

  private static void field(JsonGenerator json, SerializedString name, Object value)
      throws IOException {
    if (value == null) {
      return;
    }
    json.writeFieldName(name);
    if (value instanceof SerializedString text) {
      json.writeString(text);
    } else if (value instanceof String text) {
      json.writeString(text);
    } else if (value instanceof BigDecimal number) {
      json.writeNumber(PlainNumber.of(number));
    } else {
      json.writeObject(value);
    }
  }
}
