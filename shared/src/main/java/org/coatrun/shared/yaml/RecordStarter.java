package org.coatrun.shared.yaml;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Writes a file that {@link RecordReader} reads back: each key with its default and its note, keys
 * without a default behind a #.
 */
public final class RecordStarter {

  private static final int NOTE_COLUMN = 36;

  private final Map<String, String> values;
  private final Map<String, List<String>> remarks;
  private final List<String> lines = new ArrayList<>();
  private final Set<String> unused;

  private RecordStarter(Map<String, String> values, Map<String, List<String>> remarks) {
    this.values = values;
    this.remarks = remarks;
    unused = new TreeSet<>(values.keySet());
    unused.addAll(remarks.keySet());
  }

  /**
   * The lines of the file.
   *
   * @param type a record whose components carry {@link Key}
   * @param values what to state in place of a default: YAML on one line, by dotted path of the key
   * @param remarks lines to put under a key, behind a #, by dotted path of the key
   * @throws IllegalArgumentException where a path names no key that is written
   */
  public static List<String> lines(
      Class<? extends Record> type, Map<String, String> values, Map<String, List<String>> remarks) {
    RecordStarter starter = new RecordStarter(values, remarks);
    for (RecordComponent component : type.getRecordComponents()) {
      starter.lines.add("");
      starter.component(component, "", "");
    }
    if (!starter.unused.isEmpty()) {
      throw new IllegalArgumentException("no such key: " + starter.unused);
    }
    return List.copyOf(starter.lines);
  }

  /**
   * A text as a YAML value on one line; it reads back as that text, blanks at its ends left out.
   */
  public static String text(String text) {
    return StarterForms.quoted(text);
  }

  private void component(RecordComponent component, String path, String indent) {
    Key key = component.getAnnotation(Key.class);
    String name = Spelling.key(component.getName());
    String at = path.isEmpty() ? name : path + "." + name;
    Type type = component.getGenericType();
    if (type instanceof Class<?> group && StarterForms.isGroup(group)) {
      group(group, key, name, at, indent);
    } else {
      value(type, key, name, at, indent);
    }
    unused.remove(at);
    for (String remark : remarks.getOrDefault(at, List.of())) {
      lines.add((indent + "# " + remark).stripTrailing());
    }
  }

  private void group(Class<?> group, Key key, String name, String at, String indent) {
    int head = lines.size();
    for (RecordComponent component : group.getRecordComponents()) {
      component(component, at, indent + "  ");
    }
    boolean stated =
        lines.subList(head, lines.size()).stream().anyMatch(l -> !l.strip().startsWith("#"));
    lines.add(head, noted(indent + (stated ? "" : "# ") + name + ":", key.note()));
  }

  private void value(Type type, Key key, String name, String at, String indent) {
    Optional<YamlNode.Items> many = StarterForms.items(key, at);
    String note = StarterForms.note(key, StarterForms.isRequired(type, key));
    if (values.containsKey(at)) {
      lines.add(noted(indent + name + ": " + values.get(at), note));
    } else if (many.isPresent()) {
      lines.add(noted(indent + name + ":", note));
      many.get().values().forEach(i -> lines.add(indent + "  - " + StarterForms.flow(i)));
    } else if (!key.fallback().isEmpty()) {
      lines.add(noted(indent + name + ": " + key.fallback(), note));
    } else if (entries(type).isPresent()) {
      lines.add(noted(indent + "# " + name + ":", note));
    } else {
      lines.add(noted(indent + "# " + name + ": " + StarterForms.form(type, key), note));
    }
    entries(type).ifPresent(group -> entry(group, indent));
  }

  /** The keys that entries of a list have, where they have keys. */
  private static Optional<Class<?>> entries(Type type) {
    return StarterForms.isList(type)
            && ((ParameterizedType) type).getActualTypeArguments()[0] instanceof Class<?> inner
            && StarterForms.isGroup(inner)
        ? Optional.of(inner)
        : Optional.empty();
  }

  /** What an entry of a list can state. */
  private void entry(Class<?> group, String indent) {
    String lead = indent + "#   - ";
    for (RecordComponent component : group.getRecordComponents()) {
      Key key = component.getAnnotation(Key.class);
      Type type = component.getGenericType();
      String form = Spelling.key(component.getName()) + ": " + StarterForms.form(type, key);
      lines.add(noted(lead + form, StarterForms.note(key, StarterForms.isRequired(type, key))));
      lead = indent + "#     ";
    }
  }

  private static String noted(String text, String note) {
    return text + " ".repeat(Math.max(2, NOTE_COLUMN - text.length())) + "# " + note;
  }
}
