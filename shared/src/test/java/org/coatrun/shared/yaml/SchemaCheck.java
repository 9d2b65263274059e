package org.coatrun.shared.yaml;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.stream.StreamSupport;

/** The part of JSON Schema draft 7 that the project's schemas use, for tests. */
public final class SchemaCheck {

  private SchemaCheck() {}

  /** Whether a YAML text is what a schema describes. */
  public static boolean accepts(JsonNode schema, String yaml) {
    try {
      JsonNode value = new ObjectMapper(new YAMLFactory()).readTree(yaml);
      return accepts(schema, value);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static boolean accepts(JsonNode schema, JsonNode value) {
    return type(schema, value)
        && words(schema, value)
        && pattern(schema, value)
        && bounds(schema, value)
        && properties(schema, value)
        && items(schema, value);
  }

  private static boolean type(JsonNode schema, JsonNode value) {
    JsonNode type = schema.get("type");
    if (type == null) {
      return true;
    }
    return type.isArray()
        ? StreamSupport.stream(type.spliterator(), false).anyMatch(t -> is(t.asText(), value))
        : is(type.asText(), value);
  }

  private static boolean is(String type, JsonNode value) {
    return switch (type) {
      case "object" -> value.isObject();
      case "array" -> value.isArray();
      case "string" -> value.isTextual();
      case "boolean" -> value.isBoolean();
      case "integer" -> value.isNumber() && value.doubleValue() == Math.rint(value.doubleValue());
      case "number" -> value.isNumber();
      default -> throw new IllegalArgumentException(type);
    };
  }

  private static boolean words(JsonNode schema, JsonNode value) {
    JsonNode words = schema.get("enum");
    return words == null
        || StreamSupport.stream(words.spliterator(), false).anyMatch(w -> w.equals(value));
  }

  private static boolean pattern(JsonNode schema, JsonNode value) {
    JsonNode pattern = schema.get("pattern");
    return pattern == null
        || java.util.regex.Pattern.compile(pattern.asText()).matcher(value.asText()).find();
  }

  private static boolean bounds(JsonNode schema, JsonNode value) {
    return (!schema.has("minimum") || value.asDouble() >= schema.get("minimum").asDouble())
        && (!schema.has("maximum") || value.asDouble() <= schema.get("maximum").asDouble());
  }

  private static boolean properties(JsonNode schema, JsonNode value) {
    JsonNode known = schema.get("properties");
    if (known == null) {
      return true;
    }
    for (Map.Entry<String, JsonNode> field : value.properties()) {
      JsonNode property = known.get(field.getKey());
      if (property == null || !accepts(property, field.getValue())) {
        return false;
      }
    }
    JsonNode required = schema.get("required");
    return required == null
        || StreamSupport.stream(required.spliterator(), false).allMatch(r -> value.has(r.asText()));
  }

  private static boolean items(JsonNode schema, JsonNode value) {
    JsonNode item = schema.get("items");
    if (item == null) {
      return true;
    }
    boolean few = schema.has("minItems") && value.size() < schema.get("minItems").asInt();
    boolean many = schema.has("maxItems") && value.size() > schema.get("maxItems").asInt();
    return !few
        && !many
        && StreamSupport.stream(value.spliterator(), false).allMatch(v -> accepts(item, v));
  }
}
