package org.coatrun.cli.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Arrays;

/**
 * Writes lists of numbers digit by digit, on one line whatever the printer does with lists: there
 * are millions of them, and this takes a fraction of what a number's text does.
 */
final class NumberList {

  /** No number is longer, with what stands before and behind it. */
  private static final int LONGEST = 32;

  /** Both digits of each number below a hundred. */
  private static final char[] TWO = new char[200];

  static {
    for (int i = 0; i < 100; i++) {
      TWO[2 * i] = (char) ('0' + i / 10);
      TWO[2 * i + 1] = (char) ('0' + i % 10);
    }
  }

  private final JsonGenerator json;
  private char[] text = new char[1 << 12];
  private int length;

  NumberList(JsonGenerator json) {
    this.json = json;
  }

  void begin() {
    length = 0;
    text[length++] = '[';
  }

  /** Adds a whole number that is not negative. */
  void whole(int value) {
    next();
    digits(value);
  }

  /** Adds a number given in ten-thousandths, without noughts at its end. */
  void tenThousandths(long value) {
    next();
    long most = Math.abs(value);
    if (value < 0) {
      text[length++] = '-';
    }
    int rest = belowTenThousand(most);
    if (rest > 0) {
      text[length++] = '.';
      four(rest);
      while (text[length - 1] == '0') {
        length--;
      }
    }
  }

  /** Writes the list as a field. */
  void end(String field) throws IOException {
    text[length++] = ']';
    json.writeFieldName(field);
    json.writeRawValue(text, 0, length);
  }

  private void next() {
    if (text.length < length + LONGEST) {
      text = Arrays.copyOf(text, 2 * text.length);
    }
    if (length > 1) {
      text[length++] = ',';
    }
  }

  /** Writes what comes before the last four digits, and gives those. */
  private int belowTenThousand(long value) {
    if (value > Integer.MAX_VALUE) { // dividing those takes far longer
      digits(value / 10_000);
      return (int) (value % 10_000);
    }
    int small = (int) value;
    digits(small / 10_000);
    return small % 10_000;
  }

  private void digits(long value) {
    if (value >= 10_000) {
      four(belowTenThousand(value));
      return;
    }
    int small = (int) value;
    if (small >= 100) {
      upToTwo(small / 100);
      two(small % 100);
    } else {
      upToTwo(small);
    }
  }

  private void upToTwo(int belowHundred) {
    if (belowHundred >= 10) {
      two(belowHundred);
    } else {
      text[length++] = (char) ('0' + belowHundred);
    }
  }

  private void four(int belowTenThousand) {
    two(belowTenThousand / 100);
    two(belowTenThousand % 100);
  }

  private void two(int belowHundred) {
    text[length++] = TWO[2 * belowHundred];
    text[length++] = TWO[2 * belowHundred + 1];
  }
}
