package org.coatrun.ifcimport.part21;

import org.coatrun.shared.finding.FileFinding;

/**
 * Splits an exchange structure into its statements without decoding them.
 *
 * <p>What the scanner does from the beginning of a statement on depends on the bytes alone, never
 * on what came before. So a scan that begins at the beginning of any statement finds what a scan of
 * the whole file finds from there on; this is what makes reading in chunks safe.
 *
 * <p>A fault ends with its record: a text that is not closed ends where, after a line end or a
 * semicolon, a new record begins and the quotes would otherwise not fit; a record without a
 * semicolon ends where an equals sign shows the next one's head.
 */
final class StatementScanner {

  private final Window window;
  private final Guess guess;
  private final Texts texts;
  private final Gaps gaps;
  private final NameTable names;
  private final PlainRun plain;
  private final long size;

  /** Where the statement begins that the end of the file cuts, or -1. */
  private long open = -1;

  StatementScanner(ByteSource source, NameTable names, int windowBytes) {
    this.window = new Window(source, windowBytes);
    this.guess = new Guess(window);
    this.texts = new Texts(window, guess, source.size());
    this.gaps = new Gaps(window, source.size());
    this.names = names;
    this.plain = new PlainRun(window, names);
    this.size = source.size();
  }

  /** Where the statement or comment begins that the end of the file cuts, or -1. */
  long open() {
    return open >= 0 ? open : gaps.open();
  }

  /**
   * Scans the statements that begin before {@code until}.
   *
   * @param from the beginning of a statement, or white space before it
   * @return the beginning of the first statement not scanned, or the size of the file
   */
  long scan(long from, long until, StatementSink sink) {
    open = -1;
    gaps.forget();
    long at = gaps.skip(from);
    while (at < until && at < size) {
      at = gaps.skip(plain.pass(at, until, sink));
      if (at < until && at < size) {
        at = gaps.skip(statement(at, sink));
      }
    }
    return at;
  }

  /** As {@link #scan}, but without the quick way over plain records: what that way is held to. */
  long scanCarefully(long from, long until, StatementSink sink) {
    long at = gaps.skip(from);
    while (at < until && at < size) {
      at = gaps.skip(statement(at, sink));
    }
    return at;
  }

  /**
   * Where a record seems to begin in a range, judged without knowing what stands before it.
   *
   * @return the place, or -1 where none seems to begin
   */
  long guessBeginning(long from, long until) {
    for (long q = from; q < until; q++) {
      if (window.at(q) == '#' && guess.beginsRecord(q)) {
        return q;
      }
    }
    return -1;
  }

  /** The place behind the statement that begins here, white space behind it not included. */
  long endOf(long statement) {
    return statement(statement, StatementSink.NONE);
  }

  private long statement(long at, StatementSink sink) {
    if (window.at(at) == '#') {
      return record(at, sink);
    }
    sink.other(at);
    return skipBody(at, at, -1, sink);
  }

  private long record(long at, StatementSink sink) {
    long id = 0;
    long q = at + 1;
    int c = window.at(q);
    while (Ascii.isDigit(c) && id <= (Long.MAX_VALUE - 9) / 10) {
      id = id * 10 + (c - '0');
      c = window.at(++q);
    }
    long afterDigits = q;
    q = gaps.skip(q);
    if (afterDigits == at + 1 || window.at(q) != '=') {
      return bad(at, q, -1, sink);
    }
    q = gaps.skip(q + 1);
    long nameAt = q;
    int name = name(q);
    if (name > NameTable.COMPLEX) {
      q = gaps.skip(nameEnd);
    }
    if (name < 0 || window.at(q) != '(') {
      return bad(at, nameAt, id, sink);
    }
    sink.record(at, id, name);
    return skipBody(q, at, id, sink);
  }

  private long nameEnd;

  /** The code of the name that begins here, or -1 where none does; sets {@link #nameEnd}. */
  private int name(long at) {
    int c = window.at(at);
    if (c == '(') {
      return NameTable.COMPLEX;
    }
    if (!Ascii.isNameStart(c)) {
      return -1;
    }
    int from = (int) (at - window.base);
    if (from + NameTable.LONGEST > window.length && window.base + window.length < size) {
      window.load(at);
      from = (int) (at - window.base);
    }
    byte[] bytes = window.bytes;
    int most = Math.min(window.length, from + NameTable.LONGEST);
    int to = from + 1;
    while (to < most && Ascii.isName(bytes[to] & 0xff)) {
      to++;
    }
    if (to == from + NameTable.LONGEST) {
      return -1;
    }
    nameEnd = window.base + to;
    return names.code(bytes, from, to);
  }

  private long bad(long at, long from, long id, StatementSink sink) {
    sink.fault(FileFinding.BAD_RECORD, at, id);
    return skipBody(Math.max(from, at + 1), at, id, sink);
  }

  /** The place behind the semicolon that ends a statement, or where the next one begins without. */
  private long skipBody(long from, long start, long id, StatementSink sink) {
    long q = from;
    while (true) {
      q = skipPlain(q);
      int c = window.at(q);
      switch (c) {
        case ';':
          return q + 1;
        case '\'':
          q = texts.skip(q + 1);
          if (texts.interrupted()) {
            sink.fault(FileFinding.UNTERMINATED_TEXT, start, id);
            return q;
          }
          break;
        case '/':
          q = window.at(q + 1) == '*' ? gaps.skipComment(q) : q + 1;
          break;
        case '=':
          long head = guess.headBefore(q);
          if (head > start) {
            sink.fault(FileFinding.MISSING_SEMICOLON, start, id);
            return head;
          }
          q++;
          break;
        default:
          open = start;
          return size;
      }
    }
  }

  private long skipPlain(long from) {
    long q = from;
    while (true) {
      if (window.at(q) < 0) {
        return size;
      }
      byte[] bytes = window.bytes;
      int length = window.length;
      int i = (int) (q - window.base);
      while (i < length && !Ascii.stops(bytes[i])) {
        i++;
      }
      q = window.base + i;
      if (i < length) {
        return q;
      }
    }
  }
}
