package org.coatrun.ifcimport.part21;

import java.util.Arrays;

/**
 * Finds where the parameters of a plainly written record begin, without decoding them.
 *
 * <p>Plain is what exporters nearly always write, and what no fault can hide in: no blanks or
 * comments between the parameters, texts of printable ASCII without directives or doubled quotes,
 * numbers of few digits. Anything else is left to {@link RecordParser}, so that both together find
 * the very faults that it alone would.
 */
final class PlainRecord {

  private static final int[] NOT_PLAIN = {};
  private static final int DEEPEST = 8;
  private static final int MOST_DIGITS = 15;

  private final byte[] bytes;
  private int pos;
  private int[] starts = new int[12];
  private int count;

  private PlainRecord(byte[] bytes, int at) {
    this.bytes = bytes;
    this.pos = at;
  }

  /**
   * Where each parameter begins in {@code bytes}, and one behind the last closing parenthesis.
   *
   * @param at the opening parenthesis of the record
   * @return empty where the record is not plain
   */
  static int[] starts(byte[] bytes, int at) {
    var record = new PlainRecord(bytes, at);
    return record.list(0) && record.ends() ? record.all() : NOT_PLAIN;
  }

  private int[] all() {
    add(pos);
    return Arrays.copyOf(starts, count);
  }

  private void add(int start) {
    if (count == starts.length) {
      starts = Arrays.copyOf(starts, 2 * count);
    }
    starts[count++] = start;
  }

  private boolean ends() {
    return at(pos) == ';' && Blanks.skip(bytes, pos + 1, bytes.length) == bytes.length;
  }

  private int at(int i) {
    return i < bytes.length ? bytes[i] : -1;
  }

  private boolean list(int depth) {
    if (at(pos) != '(' || depth > DEEPEST) {
      return false;
    }
    pos++;
    if (at(pos) == ')') {
      pos++;
      return true;
    }
    while (true) {
      if (depth == 0) {
        add(pos);
      }
      if (!value(depth)) {
        return false;
      }
      int c = at(pos++);
      if (c == ')') {
        return true;
      }
      if (c != ',') {
        return false;
      }
    }
  }

  private boolean value(int depth) {
    int c = at(pos);
    switch (c) {
      case '#':
        pos++;
        return digits() > 0;
      case '\'':
        return text();
      case '$', '*':
        pos++;
        return true;
      case '(':
        return list(depth + 1);
      case '.':
        return item();
      default:
        return (c >= 'A' && c <= 'Z') ? typed(depth) : number();
    }
  }

  private boolean text() {
    pos++;
    int c = at(pos);
    while (c >= ' ' && c < 127 && c != '\'' && c != '\\') {
      c = at(++pos);
    }
    return c == '\'' && at(++pos) != '\'';
  }

  private boolean item() {
    pos++;
    return name() && at(pos++) == '.';
  }

  private boolean typed(int depth) {
    if (depth >= DEEPEST || !name() || at(pos++) != '(') {
      return false;
    }
    return value(depth + 1) && at(pos++) == ')';
  }

  /** Capital letters, digits and underscores, the first a letter. */
  private boolean name() {
    int c = at(pos);
    if (c < 'A' || c > 'Z') {
      return false;
    }
    while ((c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_') {
      c = at(++pos);
    }
    return true;
  }

  private boolean number() {
    if (at(pos) == '-') {
      pos++;
    }
    int whole = digits();
    if (whole == 0) {
      return false;
    }
    if (at(pos) == '.') {
      pos++;
      skipDigits();
    }
    if (at(pos) == 'E') {
      pos++;
      if (at(pos) == '-' || at(pos) == '+') {
        pos++;
      }
      int exponent = digits();
      return exponent > 0 && exponent < 3;
    }
    return true;
  }

  /** How many digits stand here, more than fit being none. */
  private int digits() {
    int from = pos;
    skipDigits();
    return pos - from <= MOST_DIGITS ? pos - from : 0;
  }

  private void skipDigits() {
    int c = at(pos);
    while (c >= '0' && c <= '9') {
      c = at(++pos);
    }
  }
}
