package org.coatrun.cli.page;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;

/** The content of a page as its scripts read it: JSON, written piece by piece. */
final class PageJson {

  private static final JsonFactory FORM = new JsonFactory();
  private static final double BILLION = 1e9;
  private static final double LARGE = 1e6;

  private final JsonGenerator json;
  private final Digits digits = new Digits();

  private PageJson(JsonGenerator json) {
    this.json = json;
  }

  static void write(OutputStream out, PageContent content) throws IOException {
    try (JsonGenerator json = FORM.createGenerator(out)) {
      new PageJson(json).write(content);
    }
  }

  private void write(PageContent content) throws IOException {
    json.writeStartObject();
    json.writeStringField("title", content.title());
    json.writeStringField("summary", content.summary());
    json.writeStringField("units", content.units());
    field("storeys", content.storeys());
    columns("columns", content.columns());
    field("elements", content.elements());
    columns("findingColumns", content.findingColumns());
    field("findings", content.findings());
    field("line", content.line());
    json.writeArrayFieldStart("basis");
    for (PageContent.PageProse prose : content.basis()) {
      json.writeStartObject();
      json.writeStringField("title", prose.title());
      field("lines", prose.lines());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("caution", content.caution());
    field("rest", content.rest());
    field("lacks", content.lacks());
    json.writeEndObject();
  }

  private void columns(String name, List<PageColumn> columns) throws IOException {
    json.writeArrayFieldStart(name);
    for (PageColumn column : columns) {
      column(column);
    }
    json.writeEndArray();
  }

  /** Texts and lists that are empty are left out. */
  private void column(PageColumn column) throws IOException {
    json.writeStartObject();
    text("key", column.key());
    text("label", column.label());
    text("kind", column.kind());
    text("group", column.group());
    json.writeBooleanField("members", column.members());
    json.writeBooleanField("decks", column.decks());
    json.writeBooleanField("sum", column.sum());
    json.writeBooleanField("long", column.wide());
    json.writeBooleanField("filter", column.filter());
    text("scale", column.scale());
    if (!column.order().isEmpty()) {
      field("order", column.order());
    }
    json.writeEndObject();
  }

  private void text(String name, String text) throws IOException {
    if (!text.isEmpty()) {
      json.writeStringField(name, text);
    }
  }

  private void field(String name, Object value) throws IOException {
    json.writeFieldName(name);
    value(value);
  }

  /** To more decimals than any page shows: digits beyond them are noise that nothing packs. */
  private void number(double number) throws IOException {
    if (Math.abs(number) < LARGE) {
      digits.clear();
      digits.billionths(Digits.nearest(number * BILLION));
      json.writeNumber(digits.toString());
    } else {
      json.writeNumber(number);
    }
  }

  /** A row's value: a text, number or truth, a list of values, or values by their names. */
  private void value(Object value) throws IOException {
    if (value instanceof String text) {
      json.writeString(text);
    } else if (value instanceof Double number) {
      number(number);
    } else if (value instanceof double[] numbers) {
      json.writeStartArray();
      for (double number : numbers) {
        number(number);
      }
      json.writeEndArray();
    } else if (value instanceof Iterable<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        value(item);
      }
      json.writeEndArray();
    } else if (value instanceof Map<?, ?> fields) {
      json.writeStartObject();
      for (Map.Entry<?, ?> field : fields.entrySet()) {
        field((String) field.getKey(), field.getValue());
      }
      json.writeEndObject();
    } else {
      json.writeObject(value);
    }
  }
}
