package org.coatrun.shared.yaml;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value of a YAML file with the line it stands on. */
public sealed interface YamlNode {

  /** Line of the value, from 1. */
  int line();

  /** What a plain value looks like. */
  enum Kind {
    TEXT,
    NUMBER,
    TRUTH,
    EMPTY
  }

  /** One value, as written. */
  record Scalar(int line, Kind kind, String text) implements YamlNode {}

  /** A list. */
  record Items(int line, List<YamlNode> values) implements YamlNode {
    public Items {
      values = List.copyOf(values);
    }
  }

  /** A key with its own line and its value. */
  record Entry(int line, YamlNode value) {}

  /** Keys and values, in the order of the file. */
  record Fields(int line, Map<String, Entry> entries) implements YamlNode {
    public Fields {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }
  }
}
