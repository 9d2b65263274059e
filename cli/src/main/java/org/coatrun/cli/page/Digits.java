package org.coatrun.cli.page;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Text of numbers, put together digit by digit: there are millions of them, and this takes a
 * fraction of what a number's own text does.
 */
final class Digits {

  /** No number is longer, with what stands before and behind it. */
  private static final int LONGEST = 32;

  private static final int TEN_THOUSAND = 10_000;
  private static final int BILLION = 1_000_000_000;

  /** Both digits of each number below a hundred. */
  private static final byte[] TWO = new byte[200];

  static {
    for (int i = 0; i < 100; i++) {
      TWO[2 * i] = (byte) ('0' + i / 10);
      TWO[2 * i + 1] = (byte) ('0' + i % 10);
    }
  }

  private byte[] text = new byte[1 << 12];
  private int length;

  /** The whole number next to one: the library's takes several times as long. */
  static long nearest(double number) {
    return (long) (number < 0 ? number - 0.5 : number + 0.5);
  }

  /** How long the text is. */
  int length() {
    return length;
  }

  /** Begins anew. */
  void clear() {
    length = 0;
  }

  /** Adds a sign of ASCII. */
  void put(char c) {
    room();
    text[length++] = (byte) c;
  }

  /** Adds a whole number that is not negative. */
  void whole(long value) {
    room();
    digits(value);
  }

  /** Adds a number given in ten-thousandths, without noughts at its end. */
  void tenThousandths(long value) {
    long most = begun(value);
    int rest = belowTenThousand(most);
    if (rest > 0) {
      text[length++] = '.';
      four(rest);
      withoutNoughts();
    }
  }

  /** The same in billionths. */
  void billionths(long value) {
    long most = begun(value);
    digits(most / BILLION);
    int rest = (int) (most % BILLION);
    if (rest > 0) {
      text[length++] = '.';
      int first = rest / TEN_THOUSAND;
      text[length++] = (byte) ('0' + first / TEN_THOUSAND);
      four(first % TEN_THOUSAND);
      four(rest % TEN_THOUSAND);
      withoutNoughts();
    }
  }

  void writeTo(OutputStream out) throws IOException {
    out.write(text, 0, length);
  }

  @Override
  public String toString() {
    return new String(text, 0, length, StandardCharsets.ISO_8859_1);
  }

  private void room() {
    if (text.length < length + LONGEST) {
      text = Arrays.copyOf(text, 2 * text.length);
    }
  }

  private long begun(long value) {
    room();
    if (value < 0) {
      text[length++] = '-';
    }
    return Math.abs(value);
  }

  private void withoutNoughts() {
    while (text[length - 1] == '0') {
      length--;
    }
  }

  /** Writes what comes before the last four digits, and gives those. */
  private int belowTenThousand(long value) {
    if (value > Integer.MAX_VALUE) { // dividing those takes far longer
      digits(value / TEN_THOUSAND);
      return (int) (value % TEN_THOUSAND);
    }
    int small = (int) value;
    digits(small / TEN_THOUSAND);
    return small % TEN_THOUSAND;
  }

  private void digits(long value) {
    if (value >= TEN_THOUSAND) {
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
      text[length++] = (byte) ('0' + belowHundred);
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
