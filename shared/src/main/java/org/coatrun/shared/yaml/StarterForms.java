package org.coatrun.shared.yaml;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.coatrun.shared.shape.Vec2;

/** How values and the forms of values stand in a starter file. */
final class StarterForms {

  private StarterForms() {}

  /** Whether a type is a group of keys. */
  static boolean isGroup(Class<?> type) {
    return type.isRecord() && Dimension.of(type).isEmpty() && type != Vec2.class;
  }

  static boolean isList(Type type) {
    return type instanceof ParameterizedType p && p.getRawType() == List.class;
  }

  /** Whether the reader asks for a value. */
  static boolean isRequired(Type type, Key key) {
    return key.fallback().isEmpty() && type instanceof Class<?> raw && !isGroup(raw);
  }

  /** The entries of a default that is a list with entries. */
  static Optional<YamlNode.Items> items(Key key, String path) {
    return !key.fallback().isEmpty()
            && YamlTree.parse(path, key.fallback()) instanceof YamlNode.Items items
            && !items.values().isEmpty()
        ? Optional.of(items)
        : Optional.empty();
  }

  /** The note of a key, with its bounds. */
  static String note(Key key, boolean required) {
    StringBuilder text = new StringBuilder(key.note());
    if (!key.least().isEmpty() && !key.most().isEmpty()) {
      text.append("; ").append(key.least()).append(" to ").append(key.most());
    } else if (!key.least().isEmpty()) {
      text.append("; at least ").append(key.least());
    } else if (!key.most().isEmpty()) {
      text.append("; at most ").append(key.most());
    }
    return required ? text.append("; must be given").toString() : text.toString();
  }

  /** What kind of value belongs to a key, in brackets. */
  static String form(Type type, Key key) {
    if (type instanceof ParameterizedType p) {
      Type inner = p.getActualTypeArguments()[0];
      return isList(type) ? "[" + form(inner, key) + ", ...]" : form(inner, key);
    }
    Class<?> raw = (Class<?>) type;
    Optional<Dimension> dimension = Dimension.of(raw);
    if (dimension.isPresent()) {
      return "(number with " + alternatives(names(dimension.get())) + ")";
    }
    if (raw == Vec2.class) {
      return "[(x with unit), (y with unit)]";
    }
    if (isGroup(raw)) {
      return "(group of keys)";
    }
    if (raw.isEnum()) {
      return "(" + alternatives(Spelling.words(raw)) + ")";
    }
    return scalar(raw, key);
  }

  private static String scalar(Class<?> raw, Key key) {
    if (raw == boolean.class || raw == Boolean.class) {
      return "(yes or no)";
    }
    if (raw == LocalDate.class) {
      return "(year-month-day)";
    }
    if (raw == String.class) {
      return "(text)";
    }
    return key.unit().isEmpty() ? "(number)" : "(number with " + key.unit() + ")";
  }

  private static List<String> names(Dimension dimension) {
    return dimension.units().stream().map(Dimension.Unit::name).toList();
  }

  private static String alternatives(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }

  /** A value on one line. */
  static String flow(YamlNode node) {
    if (node instanceof YamlNode.Items items) {
      return items.values().stream()
          .map(StarterForms::flow)
          .collect(Collectors.joining(", ", "[", "]"));
    }
    if (node instanceof YamlNode.Fields fields) {
      return fields.entries().entrySet().stream()
          .map(e -> e.getKey() + ": " + flow(e.getValue().value()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    YamlNode.Scalar scalar = (YamlNode.Scalar) node;
    return isPlain(scalar) ? scalar.text() : quoted(scalar.text());
  }

  /** Whether a value reads back as it is without quotes. */
  private static boolean isPlain(YamlNode.Scalar scalar) {
    try {
      return YamlTree.parse("", "[" + scalar.text() + "]") instanceof YamlNode.Items items
          && items.values().equals(List.of(new YamlNode.Scalar(1, scalar.kind(), scalar.text())));
    } catch (JobFileException e) {
      return false;
    }
  }

  /** A text in double quotes. What YAML would not carry becomes U+FFFD, line ends become blanks. */
  static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.strip().codePoints().forEach(c -> append(quoted, c));
    return quoted.append('"').toString();
  }

  private static void append(StringBuilder quoted, int c) {
    if (c == '"' || c == '\\') {
      quoted.append('\\').appendCodePoint(c);
    } else if (c == '\n' || c == '\r' || c == '\t') {
      quoted.append(' ');
    } else {
      quoted.appendCodePoint(isCarried(c) ? c : 0xFFFD);
    }
  }

  /** What YAML 1.2 calls printable, less what ends a line or marks the order of bytes. */
  private static boolean isCarried(int c) {
    return (c >= ' ' && c <= '~')
        || (c >= 0xA0 && c <= 0xD7FF && c != 0x2028 && c != 0x2029)
        || (c >= 0xE000 && c <= 0xFFFD && c != 0xFEFF)
        || c >= 0x10000;
  }
}
