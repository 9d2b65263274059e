package org.coatrun.ifcimport.part21;

/** Tells whether a record begins where, by the rules, none can; only asked in faulty places. */
final class Guess {

  /** The text was never closed: a new record begins. */
  static final long NEW_RECORD = -1;

  private static final int MOST_BLANKS = 64;
  private static final int MOST_DIGITS = 19;
  private static final int LOOK_AHEAD = 1 << 16;

  private final Window window;

  Guess(Window window) {
    this.window = window;
  }

  /**
   * Judges a {@code #} inside a text.
   *
   * @return {@link #NEW_RECORD}, or the place of the quote that closes the text, or 0 where the
   *     {@code #} is an ordinary character
   */
  long endOfTextAround(long hash) {
    if (!beginsRecord(hash)) {
      return 0;
    }
    long close = closingQuote(hash);
    if (close < 0) {
      return NEW_RECORD;
    }
    int behind = window.at(skipBlanks(close + 1));
    return behind == ',' || behind == ')' ? close : NEW_RECORD;
  }

  /** Whether what stands at a {@code #} looks like a record's beginning. */
  boolean beginsRecord(long hash) {
    return beginsAfterBreak(hash) && isHead(hash);
  }

  /** The place of {@code ENDSEC;} shortly before the end of the file, or -1. */
  long endSectionAfter(long from) {
    if (window.at(from + LOOK_AHEAD) >= 0) {
      return -1;
    }
    for (long q = from; window.at(q) >= 0; q++) {
      if (window.at(q) == 'E' && beginsAfterBreak(q) && isEndSection(q)) {
        return q;
      }
    }
    return -1;
  }

  private boolean isEndSection(long at) {
    String mark = "ENDSEC";
    for (int i = 0; i < mark.length(); i++) {
      if (window.at(at + i) != mark.charAt(i)) {
        return false;
      }
    }
    return window.at(skipBlanks(at + mark.length())) == ';';
  }

  /** The place of the {@code #} of a head whose equals sign stands here, or -1. */
  long headBefore(long equals) {
    long q = equals - 1;
    int blanks = 0;
    while (Ascii.isBlank(window.at(q)) && blanks++ < MOST_BLANKS) {
      q--;
    }
    int digits = 0;
    while (Ascii.isDigit(window.at(q)) && digits++ < MOST_DIGITS) {
      q--;
    }
    return digits > 0 && window.at(q) == '#' ? q : -1;
  }

  /** A line end or a semicolon, and only blanks between it and here. */
  private boolean beginsAfterBreak(long hash) {
    for (long q = hash - 1; q >= hash - MOST_BLANKS; q--) {
      int c = window.at(q);
      if (c == '\n' || c == '\r' || c == ';') {
        return true;
      }
      if (!Ascii.isBlank(c)) {
        return false;
      }
    }
    return false;
  }

  private boolean isHead(long hash) {
    long q = hash + 1;
    while (Ascii.isDigit(window.at(q)) && q <= hash + MOST_DIGITS) {
      q++;
    }
    if (q == hash + 1) {
      return false;
    }
    q = skipBlanks(q);
    if (window.at(q) != '=') {
      return false;
    }
    int name = window.at(skipBlanks(q + 1));
    return name == '(' || Ascii.isNameStart(name);
  }

  private long closingQuote(long from) {
    long q = from;
    while (q < from + LOOK_AHEAD) {
      int c = window.at(q);
      if (c < 0) {
        return -1;
      }
      if (c == '\'') {
        if (window.at(q + 1) != '\'') {
          return q;
        }
        q++;
      } else if (c == '\\') {
        int next = window.at(q + 1);
        q += next == '\\' ? 1 : next == 'S' && window.at(q + 2) == '\\' ? 3 : 0;
      }
      q++;
    }
    return -1;
  }

  private long skipBlanks(long from) {
    long q = from;
    while (Ascii.isBlank(window.at(q)) && q < from + MOST_BLANKS) {
      q++;
    }
    return q;
  }
}
