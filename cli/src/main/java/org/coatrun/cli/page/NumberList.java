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
    digits(most / 10_000);
    int rest = (int) (most % 10_000);
    if (rest > 0) {
      text[length++] = '.';
    }
    for (int place = 1000; rest > 0; place /= 10) {
      text[length++] = (char) ('0' + rest / place);
      rest %= place;
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

  private void digits(long value) {
    int count = 1;
    for (long more = value / 10; more > 0; more /= 10) {
      count++;
    }
    long rest = value;
    for (int at = length + count - 1; at >= length; at--) {
      text[at] = (char) ('0' + rest % 10);
      rest /= 10;
    }
    length += count;
  }
}
