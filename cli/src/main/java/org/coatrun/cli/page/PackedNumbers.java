package org.coatrun.cli.page;

import java.io.IOException;
import java.io.OutputStream;

/**
 * Writes whole numbers in as few bytes as they take: seven bits a byte, the least first (LEB128).
 * What was written is in the stream once this is flushed.
 */
final class PackedNumbers {

  /** No number is longer. */
  private static final int LONGEST = 5;

  private final OutputStream out;
  private final byte[] bytes = new byte[1 << 14];
  private int length;

  PackedNumbers(OutputStream out) {
    this.out = out;
  }

  /** Writes a number that is not negative. */
  void whole(int number) throws IOException {
    if (number < 0) {
      throw new IllegalArgumentException("a number that is negative: " + number);
    }
    if (length + LONGEST > bytes.length) {
      flush();
    }
    int rest = number;
    while (rest > 0x7F) {
      bytes[length++] = (byte) (rest | 0x80);
      rest >>>= 7;
    }
    bytes[length++] = (byte) rest;
  }

  /** Writes a number of either sign, small ones shortest: 0, -1, 1, -2, 2 as 0, 1, 2, 3, 4. */
  void signed(int number) throws IOException {
    whole(number << 1 ^ number >> 31);
  }

  /** Writes four bytes, little-endian. */
  void single(double number) throws IOException {
    if (length + LONGEST > bytes.length) {
      flush();
    }
    int bits = Float.floatToIntBits((float) number);
    for (int shift = 0; shift < 32; shift += 8) {
      bytes[length++] = (byte) (bits >> shift);
    }
  }

  void flush() throws IOException {
    out.write(bytes, 0, length);
    length = 0;
  }
}
