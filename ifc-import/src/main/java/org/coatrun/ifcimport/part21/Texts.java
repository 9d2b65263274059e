package org.coatrun.ifcimport.part21;

/** Finds the ends of texts while scanning, also of those that were never closed. */
final class Texts {

  private final Window window;
  private final Guess guess;
  private final long size;
  private boolean interrupted;

  Texts(Window window, Guess guess, long size) {
    this.window = window;
    this.guess = guess;
    this.size = size;
  }

  /** Whether the last text was left because a new record begins. */
  boolean interrupted() {
    return interrupted;
  }

  /**
   * The place behind the text whose opening quote stands just before; the size if it never ends.
   */
  long skip(long from) {
    interrupted = false;
    long q = from;
    while (true) {
      q = runInText(q);
      int c = window.at(q);
      if (c == '\'') {
        if (window.at(q + 1) != '\'') {
          return q + 1;
        }
        q += 2;
      } else if (c == '\\') {
        int next = window.at(q + 1);
        q += next == '\\' ? 2 : next == 'S' && window.at(q + 2) == '\\' ? 4 : 1;
      } else if (c == '#') {
        long close = guess.endOfTextAround(q);
        if (close == Guess.NEW_RECORD) {
          interrupted = true;
          return q;
        }
        q = close > q ? close : q + 1;
      } else {
        return endOfFileInText(from);
      }
    }
  }

  /** The last text of the file is not closed; the marks behind it should not be lost with it. */
  private long endOfFileInText(long from) {
    long mark = guess.endSectionAfter(from);
    interrupted = mark >= 0;
    return interrupted ? mark : size;
  }

  private long runInText(long from) {
    long q = from;
    while (true) {
      if (window.at(q) < 0) {
        return size;
      }
      byte[] bytes = window.bytes;
      int length = window.length;
      int i = (int) (q - window.base);
      while (i < length && bytes[i] != '\'' && bytes[i] != '\\' && bytes[i] != '#') {
        i++;
      }
      q = window.base + i;
      if (i < length) {
        return q;
      }
    }
  }
}
