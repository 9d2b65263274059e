package org.coatrun.cli.output;

import java.math.BigDecimal;

/** The digits of numbers, without exponents. */
public final class PlainNumber {

  private PlainNumber() {}

  /** The same as {@code toPlainString}, but a number keeps its text for the next time. */
  public static String of(BigDecimal number) {
    String text = number.toString();
    return text.indexOf('E') < 0 ? text : number.toPlainString();
  }
}
