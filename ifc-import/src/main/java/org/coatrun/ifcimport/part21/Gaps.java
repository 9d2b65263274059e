package org.coatrun.ifcimport.part21;

/** Passes over white space while scanning: blanks, comments, print control directives. */
final class Gaps {

  private final Window window;
  private final long size;
  private long open = -1;

  Gaps(Window window, long size) {
    this.window = window;
    this.size = size;
  }

  /** Where the comment begins that the end of the file cuts, or -1. */
  long open() {
    return open;
  }

  /** Begins anew. */
  void forget() {
    open = -1;
  }

  /** The place behind the comment that begins here; the size if it never ends. */
  long skipComment(long from) {
    long q = from + 2;
    while (true) {
      int c = window.at(q);
      if (c < 0) {
        open = from;
        return size;
      }
      q++;
      if (c == '*' && window.at(q) == '/') {
        return q + 1;
      }
    }
  }

  /** The first place from here that is no white space, at most the size. */
  long skip(long from) {
    long q = from;
    while (true) {
      q = runOfBlanks(q);
      int c = window.at(q);
      if (c == '/' && window.at(q + 1) == '*') {
        q = skipComment(q);
      } else if (c == '\\' && isPrintControl(q)) {
        q += 3;
      } else {
        return Math.min(q, size);
      }
    }
  }

  private long runOfBlanks(long from) {
    long q = from;
    while (Ascii.isBlank(window.at(q))) {
      byte[] bytes = window.bytes;
      int length = window.length;
      int i = (int) (q - window.base);
      while (i < length && bytes[i] >= 0 && bytes[i] <= ' ') {
        i++;
      }
      q = window.base + i;
    }
    return q;
  }

  private boolean isPrintControl(long q) {
    int kind = window.at(q + 1);
    return (kind == 'N' || kind == 'F') && window.at(q + 2) == '\\';
  }
}
