package org.coatrun.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.io.SerializedString;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.coatrun.cli.output.PlainNumber;

/**
 * Lists of a result in JSON: the same columns as in CSV. What is not known of a row, or does not
 * apply to it, is left out of its object.
 */
public final class JsonRows {

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
    SerializedString[] names =
        table.names().stream().map(SerializedString::new).toArray(SerializedString[]::new);
    Repeated[] texts = new Repeated[names.length];
    Arrays.setAll(texts, i -> new Repeated());
    json.writeArrayFieldStart(name);
    for (List<Object> row : table.rows()) {
      json.writeStartObject();
      for (int i = 0; i < names.length; i++) {
        Object value = row.get(i);
        if (value instanceof String text && texts[i].says(text)) {
          json.writeFieldName(names[i]);
          json.writeString(texts[i].written());
        } else {
          field(json, names[i], value);
        }
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** The text of a column, in bytes once it stands there again: most texts do, row by row. */
  private static final class Repeated {

    private String text = "";
    private SerializedString written = new SerializedString("");

    boolean says(String next) {
      boolean again = text.equals(next);
      text = next;
      return again;
    }

    SerializedString written() {
      if (!written.getValue().equals(text)) {
        written = new SerializedString(text);
      }
      return written;
    }
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
    if (value instanceof String text) {
      json.writeString(text);
    } else if (value instanceof BigDecimal number) {
      json.writeNumber(PlainNumber.of(number));
    } else {
      json.writeObject(value);
    }
  }
}
