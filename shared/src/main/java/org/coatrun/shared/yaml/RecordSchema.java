package org.coatrun.shared.yaml;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/**
 * The JSON Schema (draft 7) of the files that {@link RecordReader} reads into a record: the same
 * keys, words and units. Bounds stand in the descriptions: a schema cannot compare quantities.
 */
public final class RecordSchema {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private RecordSchema() {}

  /** The schema of a record, with a title. */
  public static ObjectNode of(Class<? extends Record> type, String title) {
    ObjectNode schema = JSON.objectNode();
    schema.put("$schema", "http://json-schema.org/draft-07/schema#");
    schema.put("title", title);
    schema.setAll(group(type));
    return schema;
  }

  private static ObjectNode group(Class<?> type) {
    ObjectNode schema = JSON.objectNode();
    schema.put("type", "object");
    schema.put("additionalProperties", false);
    ArrayNode required = JSON.arrayNode();
    ObjectNode properties = schema.putObject("properties");
    for (RecordComponent component : type.getRecordComponents()) {
      Key key = component.getAnnotation(Key.class);
      String name = Spelling.key(component.getName());
      ObjectNode value = value(component.getGenericType(), key);
      properties.set(name, value.put("description", description(key)));
      if (isRequired(component, key)) {
        required.add(name);
      }
    }
    if (!required.isEmpty()) {
      schema.set("required", required);
    }
    return schema;
  }

  private static boolean isRequired(RecordComponent component, Key key) {
    Class<?> type = component.getType();
    return key.fallback().isEmpty()
        && type != Optional.class
        && type != List.class
        && !isGroup(type);
  }

  private static boolean isGroup(Class<?> type) {
    return type.isRecord() && Dimension.of(type).isEmpty() && type != Vec2.class;
  }

  private static String description(Key key) {
    StringBuilder text = new StringBuilder(key.note());
    append(text, "unless stated: ", key.fallback());
    append(text, "least ", key.least());
    append(text, "most ", key.most());
    return text.toString();
  }

  private static void append(StringBuilder text, String word, String value) {
    if (!value.isEmpty()) {
      text.append("; ").append(word).append(value);
    }
  }

  private static ObjectNode value(Type type, Key key) {
    if (type instanceof ParameterizedType p) {
      ObjectNode inner = value(p.getActualTypeArguments()[0], key);
      if (p.getRawType() == Optional.class) {
        return inner;
      }
      ObjectNode list = JSON.objectNode().put("type", "array");
      list.set("items", inner);
      return list;
    }
    Class<?> raw = (Class<?>) type;
    if (raw == Vec2.class) {
      ObjectNode point = JSON.objectNode().put("type", "array");
      point.put("minItems", 2).put("maxItems", 2);
      point.set("items", value(Length.class, key));
      return point;
    }
    return isGroup(raw) ? group(raw) : scalar(raw, key);
  }

  private static ObjectNode scalar(Class<?> type, Key key) {
    ObjectNode schema = JSON.objectNode();
    Optional<Dimension> dimension = Dimension.of(type);
    if (dimension.isPresent()) {
      return schema.put("type", "string").put("pattern", QuantityText.pattern(dimension.get()));
    }
    if (isNumber(type)) {
      return number(schema, type, key);
    }
    if (type == boolean.class || type == Boolean.class) {
      schema.set("enum", JSON.arrayNode().add(true).add(false).add("yes").add("no"));
    } else if (type.isEnum()) {
      ArrayNode words = JSON.arrayNode();
      Spelling.words(type).forEach(words::add);
      // YAML takes a word of digits for a number
      Spelling.words(type).stream()
          .filter(w -> w.matches("[0-9]+"))
          .forEach(w -> words.add(Integer.parseInt(w)));
      schema.set("enum", words);
    } else if (type == LocalDate.class) {
      schema.put("type", "string").put("pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
    } else {
      schema.set("type", JSON.arrayNode().add("string").add("number").add("boolean"));
    }
    return schema;
  }

  private static boolean isNumber(Class<?> type) {
    return type == double.class
        || type == Double.class
        || type == int.class
        || type == Integer.class;
  }

  private static ObjectNode number(ObjectNode schema, Class<?> type, Key key) {
    if (!key.unit().isEmpty()) {
      return schema.put("type", "string").put("pattern", QuantityText.pattern(key.unit()));
    }
    boolean whole = type == int.class || type == Integer.class;
    schema.put("type", whole ? "integer" : "number");
    if (!key.least().isEmpty()) {
      schema.put("minimum", Double.parseDouble(key.least()));
    }
    if (!key.most().isEmpty()) {
      schema.put("maximum", Double.parseDouble(key.most()));
    }
    return schema;
  }
}
