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

  /** Each number below ten thousand, with noughts before it. */
  private static final char[] FOUR = fourDigits();

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
    int count = small < 10 ? 1 : small < 100 ? 2 : small < 1000 ? 3 : 4;
    System.arraycopy(FOUR, 4 * small + 4 - count, text, length, count);
    length += count;
  }

  private void four(int belowTenThousand) {
    System.arraycopy(FOUR, 4 * belowTenThousand, text, length, 4);
    length += 4;
  }

  private static char[] fourDigits() {
    char[] digits = new char[40_000];
    for (int i = 0; i < digits.length; i++) {
      int number = i / 4;
      int place = i % 4;
      int scale = place == 0 ? 1000 : place == 1 ? 100 : place == 2 ? 10 : 1;
      digits[i] = (char) ('0' + number / scale % 10);
    }
    return digits;
  }
}
