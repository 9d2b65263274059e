package org.coatrun.ifcimport.part21;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** From the lines of the header section to a {@link Header}. */
final class HeaderLines {

  private static final String DESCRIPTION = "FILE_DESCRIPTION";
  private static final String NAME = "FILE_NAME";
  private static final String SCHEMA = "FILE_SCHEMA";

  /** How many parameters each line has, ISO 10303-21, 8.2; the last three are optional lines. */
  private static final Map<String, Integer> SIZES =
      Map.of(
          DESCRIPTION,
          2,
          NAME,
          7,
          SCHEMA,
          1,
          "FILE_POPULATION",
          3,
          "SECTION_LANGUAGE",
          2,
          "SECTION_CONTEXT",
          2,
          "SCHEMA_POPULATION",
          1);

  private HeaderLines() {}

  /** Whether the standard knows a line. */
  static boolean isKnown(StepRecord line) {
    return SIZES.containsKey(line.name());
  }

  /** What is wrong with a line, in one sentence. */
  static Optional<String> check(StepRecord line) {
    Integer size = SIZES.get(line.name());
    if (size == null) {
      boolean custom = line.name().startsWith("!");
      return custom ? Optional.empty() : Optional.of(line.name() + " is no line of a header");
    }
    return line.size() == size
        ? Optional.empty()
        : Optional.of(line.name() + " has " + line.size() + " values instead of " + size);
  }

  /** Reads the three lines that each file has; the first of each counts. */
  static Header header(List<StepRecord> lines, Consumer<String> faults) {
    StepRecord description = line(lines, DESCRIPTION, faults);
    StepRecord name = line(lines, NAME, faults);
    StepRecord schema = line(lines, SCHEMA, faults);
    return new Header(
        texts(description, 0),
        text(name, 0),
        text(name, 1),
        texts(name, 2),
        texts(name, 3),
        text(name, 4),
        text(name, 5),
        text(name, 6),
        texts(schema, 0));
  }

  private static StepRecord line(List<StepRecord> lines, String name, Consumer<String> faults) {
    Optional<StepRecord> found = lines.stream().filter(r -> r.name().equals(name)).findFirst();
    if (found.isEmpty()) {
      faults.accept("the header lacks the line " + name);
    }
    return found.orElse(StepRecord.simple(0, name, List.of()));
  }

  private static String text(StepRecord line, int position) {
    return line.text(position).orElse("");
  }

  /** A list of texts; a single text without parentheses counts as a list of one. */
  private static List<String> texts(StepRecord line, int position) {
    Value v = line.value(position);
    List<Value> items = v.isList() ? v.items() : List.of(v);
    return items.stream().flatMap(t -> t.asText().stream()).toList();
  }
}
