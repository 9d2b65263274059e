package org.coatrun.cli.spreadsheet;

import java.math.BigDecimal;
import java.util.Objects;

/** What a cell holds. */
public sealed interface Cell {

  Style style();

  /** Nothing, but a style. */
  record Blank(Style style) implements Cell {
    private static final Blank PLAIN = new Blank(Style.PLAIN);
  }

  /** Text, which never becomes a formula whatever it looks like. */
  record Text(String text, Style style) implements Cell {
    public Text {
      Objects.requireNonNull(text);
    }
  }

  /** A number. */
  record Value(BigDecimal value, Style style) implements Cell {
    public Value {
      Objects.requireNonNull(value);
    }
  }

  /**
   * A formula with the number that it gives.
   *
   * @param formula without its equals sign; never made from a text of the model
   */
  record Formula(String formula, BigDecimal value, Style style) implements Cell {
    public Formula {
      Objects.requireNonNull(formula);
      Objects.requireNonNull(value);
    }
  }

  /** An empty cell. */
  static Cell blank() {
    return Blank.PLAIN;
  }

  static Cell text(String text) {
    return new Text(text, Style.PLAIN);
  }

  static Cell text(String text, Style style) {
    return new Text(text, style);
  }

  static Cell number(BigDecimal value, Style style) {
    return new Value(value, style);
  }

  static Cell number(long value, Style style) {
    return new Value(BigDecimal.valueOf(value), style);
  }

  /**
   * A number.
   *
   * @throws IllegalArgumentException where it is not finite
   */
  static Cell number(double value, Style style) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite number: " + value);
    }
    return new Value(BigDecimal.valueOf(value), style);
  }

  static Cell formula(String formula, BigDecimal value, Style style) {
    return new Formula(formula, value, style);
  }
}
