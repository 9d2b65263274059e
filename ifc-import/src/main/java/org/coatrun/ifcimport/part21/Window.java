package org.coatrun.ifcimport.part21;

/** A piece of the bytes that moves along; single-threaded. Keeps a little of what lies behind. */
final class Window {

  /** How far behind a position bytes can be had without moving the window back. */
  static final int BEHIND = 256;

  final byte[] bytes;

  /** Position of the first byte held. */
  long base;

  /** How many bytes are held. */
  int length;

  private final ByteSource source;
  private final long size;

  Window(ByteSource source, int capacity) {
    this.source = source;
    this.size = source.size();
    this.bytes = new byte[Math.max(capacity, 4 * BEHIND)];
  }

  /** The byte at a position, 0 to 255, or -1 outside the file. */
  int at(long position) {
    long i = position - base;
    if (i >= 0 && i < length) {
      return bytes[(int) i] & 0xff;
    }
    return load(position) ? bytes[(int) (position - base)] & 0xff : -1;
  }

  /** Moves so that the position is held; false outside the file. */
  boolean load(long position) {
    if (position < 0 || position >= size) {
      return false;
    }
    long from = Math.max(0, position - BEHIND);
    int count = (int) Math.min(bytes.length, size - from);
    source.read(from, bytes, 0, count);
    base = from;
    length = count;
    return true;
  }
}
