package org.coatrun.testmodels.facts;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Writes facts as JSON, one element a line. */
public final class FactsJson {
  private FactsJson() {}

  /** Returns the text; numbers with nine decimals, fields in a fixed order. */
  public static String write(BuildingFacts facts) {
    String elements =
        facts.elements().stream().map(FactsJson::element).collect(Collectors.joining(",\n"));
    return "{\n\"records\":"
        + facts.records()
        + ",\n\"byEntity\":"
        + counts(facts.byEntity())
        + ",\n\"byStorey\":"
        + counts(facts.byStorey())
        + ",\n\"bySection\":"
        + counts(facts.bySection())
        + ",\n\"elements\":[\n"
        + elements
        + "\n]\n}\n";
  }

  private static String counts(Map<String, Integer> counts) {
    return counts.entrySet().stream()
        .map(e -> text(e.getKey()) + ":" + e.getValue())
        .collect(Collectors.joining(",", "{", "}"));
  }

  private static String element(ElementFact e) {
    return "{\"guid\":"
        + text(e.guid())
        + ",\"entity\":"
        + text(e.entity())
        + ",\"name\":"
        + text(e.name())
        + ",\"tag\":"
        + text(e.tag())
        + ",\"storey\":"
        + text(e.storey())
        + ",\"section\":"
        + text(e.section())
        + ",\"matter\":"
        + text(e.matter().name())
        + ",\"shape\":"
        + text(e.shape())
        + ",\"length_m\":"
        + number(e.lengthM())
        + optional("body_m2", e.bodyAreaM2())
        + optional("volume_m3", e.volumeM3())
        + "}";
  }

  private static String optional(String name, OptionalDouble value) {
    return value.isPresent() ? ",\"" + name + "\":" + number(value.getAsDouble()) : "";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.9f", value);
  }

  private static String text(String value) {
    return "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
