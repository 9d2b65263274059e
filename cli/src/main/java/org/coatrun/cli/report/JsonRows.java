package org.coatrun.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.io.SerializedString;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;

/** Lists of a result in JSON: the same columns as in CSV. */
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

  /** A list of objects, a field for each column. */
  public static <T> void rows(
      JsonGenerator json, String name, List<Column<T>> columns, List<T> items) throws IOException {
    SerializedString[] names = names(columns);
    json.writeArrayFieldStart(name);
    for (T item : items) {
      json.writeStartObject();
      fields(json, columns, names, item);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** The columns of one item as fields of the object that is open. */
  public static <T> void fields(JsonGenerator json, List<Column<T>> columns, T item)
      throws IOException {
    fields(json, columns, names(columns), item);
  }

  private static <T> SerializedString[] names(List<Column<T>> columns) {
    return columns.stream()
        .map(c -> new SerializedString(c.name()))
        .toArray(SerializedString[]::new);
  }

  private static <T> void fields(
      JsonGenerator json, List<Column<T>> columns, SerializedString[] names, T item)
      throws IOException {
    for (int i = 0; i < names.length; i++) {
      json.writeFieldName(names[i]);
      value(json, columns.get(i).value().apply(item));
    }
  }

  private static void value(JsonGenerator json, Object value) throws IOException {
    if (value == null) {
      json.writeNull();
    } else if (value instanceof String text) {
      json.writeString(text);
    } else if (value instanceof BigDecimal number) {
      json.writeNumber(number);
    } else {
      json.writeObject(value);
    }
  }
}
