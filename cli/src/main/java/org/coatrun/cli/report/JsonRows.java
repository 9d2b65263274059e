package org.coatrun.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
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
    json.writeArrayFieldStart(name);
    for (T item : items) {
      json.writeStartObject();
      fields(json, columns, item);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** The columns of one item as fields of the object that is open. */
  public static <T> void fields(JsonGenerator json, List<Column<T>> columns, T item)
      throws IOException {
    for (Column<T> column : columns) {
      json.writeObjectField(column.name(), column.value().apply(item));
    }
  }
}
