package org.coatrun.shared.yaml;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** Reads a tree into a record: keys are its components, values are checked against their types. */
public final class RecordReader {

  private final String file;

  private RecordReader(String file) {
    this.file = file;
  }

  /**
   * Reads a text into a record.
   *
   * @param file name to use in messages
   * @param type a record whose components carry {@link Key}
   * @throws JobFileException with one sentence about the first thing that is wrong
   */
  public static <R extends Record> R read(String file, String text, Class<R> type) {
    YamlNode root = YamlTree.parse(file, text);
    return type.cast(new RecordReader(file).record(root, type, ""));
  }

  private Object record(YamlNode node, Class<?> type, String path) {
    if (!(node instanceof YamlNode.Fields fields)) {
      throw fault(node.line(), path, "a group of keys belongs here, each with its value.");
    }
    RecordComponent[] components = type.getRecordComponents();
    refuseUnknown(fields, components, path);
    Object[] values = new Object[components.length];
    for (int i = 0; i < components.length; i++) {
      values[i] = component(fields, components[i], path);
    }
    return make(type, components, values, fields.line(), path);
  }

  private void refuseUnknown(YamlNode.Fields fields, RecordComponent[] components, String path) {
    List<String> known = Arrays.stream(components).map(c -> Spelling.key(c.getName())).toList();
    for (Map.Entry<String, YamlNode.Entry> e : fields.entries().entrySet()) {
      if (!known.contains(e.getKey())) {
        String hint =
            Spelling.nearest(e.getKey(), known)
                .map(k -> "perhaps '" + k + "' is meant.")
                .orElse("known here: " + String.join(", ", known) + ".");
        throw fault(e.getValue().line(), path(path, e.getKey()), "unknown key; " + hint);
      }
    }
  }

  private Object component(YamlNode.Fields fields, RecordComponent component, String path) {
    String name = Spelling.key(component.getName());
    String at = path(path, name);
    YamlNode.Entry entry = fields.entries().get(name);
    Key key = component.getAnnotation(Key.class);
    if (entry != null) {
      if (entry.value() instanceof YamlNode.Scalar s && s.kind() == YamlNode.Kind.EMPTY) {
        throw fault(entry.line(), at, "the key has no value; give one or leave the key out.");
      }
      return value(entry.value(), component.getGenericType(), key, at);
    }
    return fallback(fields, component, key, at);
  }

  private Object fallback(YamlNode.Fields fields, RecordComponent component, Key key, String at) {
    Class<?> type = component.getType();
    if (!key.fallback().isEmpty()) {
      YamlNode node = YamlTree.parse(at, key.fallback());
      return value(node, component.getGenericType(), key, at);
    }
    if (type == Optional.class) {
      return Optional.empty();
    }
    if (type == List.class) {
      return List.of();
    }
    if (type.isRecord() && Dimension.of(type).isEmpty() && type != Vec2.class) {
      return record(new YamlNode.Fields(fields.line(), new LinkedHashMap<>()), type, at);
    }
    throw fault(fields.line(), at, "this key is missing and must be given.");
  }

  private Object value(YamlNode node, Type type, Key key, String at) {
    if (type instanceof ParameterizedType p) {
      Type inner = p.getActualTypeArguments()[0];
      return p.getRawType() == Optional.class
          ? Optional.of(value(node, inner, key, at))
          : list(node, inner, key, at);
    }
    Class<?> raw = (Class<?>) type;
    if (raw == Vec2.class) {
      return point(node, key, at);
    }
    if (raw.isRecord() && Dimension.of(raw).isEmpty()) {
      return record(node, raw, at);
    }
    if (!(node instanceof YamlNode.Scalar scalar)) {
      throw fault(node.line(), at, "one value belongs here, not a list or a group.");
    }
    try {
      return ScalarReader.read(scalar, raw, key);
    } catch (IllegalArgumentException e) {
      throw fault(node.line(), at, e.getMessage());
    }
  }

  private List<Object> list(YamlNode node, Type inner, Key key, String at) {
    if (!(node instanceof YamlNode.Items items)) {
      throw fault(node.line(), at, "a list belongs here: [a, b] or one '- ' a line.");
    }
    List<Object> values = new ArrayList<>();
    for (int i = 0; i < items.values().size(); i++) {
      values.add(value(items.values().get(i), inner, key, at + "[" + (i + 1) + "]"));
    }
    return values;
  }

  private Vec2 point(YamlNode node, Key key, String at) {
    if (!(node instanceof YamlNode.Items items) || items.values().size() != 2) {
      throw fault(node.line(), at, "a point is two lengths: [12 ft, 30 ft].");
    }
    List<Object> xy = list(node, Length.class, key, at);
    return new Vec2(((Length) xy.get(0)).metres(), ((Length) xy.get(1)).metres());
  }

  private Object make(
      Class<?> type, RecordComponent[] components, Object[] values, int line, String path) {
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      Constructor<?> constructor = type.getDeclaredConstructor(types);
      return constructor.newInstance(values);
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException impossible) {
        throw fault(line, path, sentence(impossible.getMessage()));
      }
      throw new IllegalStateException("cannot make " + type.getName(), e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot make " + type.getName(), e);
    }
  }

  private static String sentence(String message) {
    return message.endsWith(".") ? message : message + ".";
  }

  private JobFileException fault(int line, String path, String sentence) {
    return new JobFileException(file, line, path, sentence);
  }

  private static String path(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
