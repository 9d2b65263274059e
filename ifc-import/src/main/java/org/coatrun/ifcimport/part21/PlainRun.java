package org.coatrun.ifcimport.part21;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * Passes over records written as exporters nearly always write them, eight bytes at a time.
 *
 * <p>Plain is {@code #1=NAME(…);} without white space up to the parenthesis and with nothing
 * between it and the semicolon that could hide a fault: no comment, no equals sign, no text with a
 * backslash, a {@code #} or a doubled quote. The first record that is anything else, or that the
 * window cuts, is left to {@link StatementScanner}, which by itself would find the same records.
 */
final class PlainRun {

  private static final VarHandle EIGHT =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
  private static final long ONES = 0x0101010101010101L;
  private static final long TOPS = ONES << 7;
  private static final long PARENTHESES = ONES * '(';
  private static final long SEMICOLONS = ONES * ';';
  private static final long EQUALS_SIGNS = ONES * '=';
  private static final long SLASHES = ONES * '/';

  /** The bit by which a quote and a slash differ. */
  private static final long QUOTE_OR_SLASH = ONES * ('/' ^ '\'');

  /** More digits might not fit a number. */
  private static final int MOST_DIGITS = 18;

  private final Window window;
  private final NameTable names;
  private byte[] bytes = {};
  private int length;

  PlainRun(Window window, NameTable names) {
    this.window = window;
    this.names = names;
  }

  /**
   * Passes over plain records from the beginning of a statement on.
   *
   * @return where the first statement that was not passed over begins, or white space before it
   */
  long pass(long at, long until, StatementSink sink) {
    if (window.at(at) != '#') {
      return at;
    }
    bytes = window.bytes;
    length = window.length;
    long base = window.base;
    int last = (int) Math.min(length, until - base);
    int from = (int) (at - base);
    while (from < last && bytes[from] == '#') {
      int end = record(from, base, sink);
      if (end < 0) {
        return base + from;
      }
      from = skipBlanks(end);
    }
    return base + from;
  }

  /** The place behind a plain record; -1, with nothing handed on, where it is not plain. */
  private int record(int from, long base, StatementSink sink) {
    long id = 0;
    int i = from + 1;
    while (i < length && bytes[i] >= '0' && bytes[i] <= '9') {
      id = id * 10 + (bytes[i++] - '0');
    }
    int digits = i - from - 1;
    if (digits == 0 || digits > MOST_DIGITS || i >= length || bytes[i] != '=') {
      return -1;
    }
    int open = parenthesis(i + 1);
    int end = open < 0 ? -1 : body(open);
    int name = end < 0 ? -1 : names.ifName(bytes, i + 1, open);
    if (name < 0) {
      return -1;
    }
    sink.record(base + from, id, name);
    return end;
  }

  /** The opening parenthesis behind a name that begins here, or -1 where none is near. */
  private int parenthesis(int from) {
    int most = Math.min(length, from + NameTable.LONGEST);
    int i = from;
    for (; i + 8 <= most; i += 8) {
      long found = zeros((long) EIGHT.get(bytes, i) ^ PARENTHESES);
      if (found != 0) {
        return i + (Long.numberOfTrailingZeros(found) >>> 3);
      }
    }
    for (; i < most; i++) {
      if (bytes[i] == '(') {
        return i;
      }
    }
    return -1;
  }

  /** The place behind the semicolon, or -1 where something stands before it that is not plain. */
  private int body(int from) {
    int i = from;
    while (true) {
      i = skipToStop(i);
      if (i >= length) {
        return -1;
      }
      if (bytes[i] == ';') {
        return i + 1;
      }
      i = bytes[i] == '\'' ? text(i + 1) : -1;
      if (i < 0) {
        return -1;
      }
    }
  }

  private int skipToStop(int from) {
    int i = from;
    for (; i + 8 <= length; i += 8) {
      long eight = (long) EIGHT.get(bytes, i);
      long found =
          zeros((eight | QUOTE_OR_SLASH) ^ SLASHES)
              | zeros(eight ^ SEMICOLONS)
              | zeros(eight ^ EQUALS_SIGNS);
      if (found != 0) {
        return i + (Long.numberOfTrailingZeros(found) >>> 3);
      }
    }
    while (i < length && !Ascii.stops(bytes[i])) {
      i++;
    }
    return i;
  }

  /**
   * Marks the bytes that are zero by their highest bit; the lowest mark is right, those above it
   * may not be.
   */
  private static long zeros(long eight) {
    return (eight - ONES) & ~eight & TOPS;
  }

  /** The place behind the quote that closes a plain text, or -1. */
  private int text(int from) {
    int i = from;
    while (i < length && bytes[i] != '\'' && bytes[i] != '\\' && bytes[i] != '#') {
      i++;
    }
    return i + 1 < length && bytes[i] == '\'' && bytes[i + 1] != '\'' ? i + 1 : -1;
  }

  private int skipBlanks(int from) {
    int i = from;
    while (i < length && bytes[i] >= 0 && bytes[i] <= ' ') {
      i++;
    }
    return i;
  }
}
