package org.coatrun.shared.yaml;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Reads one plain value as a quantity, number, word, date or yes and no. */
final class ScalarReader {

  private static final int LONGEST_TEXT = 500;

  private ScalarReader() {}

  /**
   * @throws IllegalArgumentException with a sentence where the value is of another kind or out of
   *     bounds
   */
  static Object read(YamlNode.Scalar scalar, Class<?> type, Key key) {
    Optional<Dimension> dimension = Dimension.of(type);
    if (dimension.isPresent()) {
      return Bounds.check(QuantityText.parse(scalar.text(), dimension.get()), scalar.text(), key);
    }
    if (type == double.class || type == Double.class) {
      return Bounds.check(decimal(scalar, key), scalar.text(), key);
    }
    if (type == int.class || type == Integer.class) {
      return Bounds.check(whole(scalar, key), scalar.text(), key);
    }
    if (type == boolean.class || type == Boolean.class) {
      return truth(scalar);
    }
    if (type.isEnum()) {
      return word(scalar, type);
    }
    return type == LocalDate.class ? date(scalar.text()) : text(scalar.text());
  }

  private static Double decimal(YamlNode.Scalar scalar, Key key) {
    if (!key.unit().isEmpty()) {
      return QuantityText.parse(scalar.text(), key.unit());
    }
    if (scalar.kind() != YamlNode.Kind.NUMBER) {
      throw new IllegalArgumentException("'" + scalar.text() + "' is not a number.");
    }
    return number(scalar.text());
  }

  private static double number(String text) {
    try {
      double value = Double.parseDouble(text);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // said below
    }
    throw new IllegalArgumentException("'" + text + "' is not a plain number.");
  }

  private static Integer whole(YamlNode.Scalar scalar, Key key) {
    double value = decimal(scalar, key);
    if (value != Math.rint(value) || Math.abs(value) > 1e9) {
      throw new IllegalArgumentException("'" + scalar.text() + "' is not a whole number.");
    }
    return (int) value;
  }

  private static Boolean truth(YamlNode.Scalar scalar) {
    return switch (scalar.text()) {
      case "yes", "true" -> true;
      case "no", "false" -> false;
      default ->
          throw new IllegalArgumentException("'" + scalar.text() + "' is neither yes nor no.");
    };
  }

  private static Object word(YamlNode.Scalar scalar, Class<?> type) {
    return Spelling.constant(type, scalar.text())
        .orElseThrow(() -> new IllegalArgumentException(Words.unknown(scalar.text(), type)));
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException(
          "'" + text + "' is not a date; write year-month-day, such as 2026-03-02.", e);
    }
  }

  private static String text(String text) {
    if (text.isEmpty() || text.length() > LONGEST_TEXT) {
      throw new IllegalArgumentException("a text of 1 to 500 characters belongs here.");
    }
    return text;
  }
}
