package org.coatrun.ifcimport.part21;

import java.util.Arrays;

/** Line numbers of places, counted when first asked for and kept block by block; thread-safe. */
final class LineCounter {

  private static final int BLOCK = 1 << 16;

  private final ByteSource source;

  /** Line ends before each block counted so far. */
  private long[] before = new long[16];

  private int known = 1;
  private byte[] buffer;

  LineCounter(ByteSource source) {
    this.source = source;
  }

  /** The line of a place, from 1; LF, CR and CRLF end a line. */
  synchronized long lineOf(long position) {
    int block = (int) (position / BLOCK);
    while (known <= block) {
      if (known == before.length) {
        before = Arrays.copyOf(before, 2 * known);
      }
      long start = (long) (known - 1) * BLOCK;
      before[known] = before[known - 1] + ends(start, start + BLOCK);
      known++;
    }
    long start = (long) block * BLOCK;
    return before[block] + ends(start, position) + 1;
  }

  /** Line ends in a range; a CR counts unless an LF follows, which then counts instead. */
  private long ends(long from, long to) {
    int length = (int) (to - from);
    int read = (int) (Math.min(to + 1, source.size()) - from);
    if (buffer == null) {
      buffer = new byte[BLOCK + 1];
    }
    source.read(from, buffer, 0, read);
    long count = 0;
    for (int i = 0; i < length; i++) {
      byte c = buffer[i];
      if (c == '\n' || (c == '\r' && (i + 1 >= read || buffer[i + 1] != '\n'))) {
        count++;
      }
    }
    return count;
  }
}
