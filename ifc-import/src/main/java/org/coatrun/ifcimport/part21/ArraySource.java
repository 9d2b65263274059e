package org.coatrun.ifcimport.part21;

/** Bytes in memory. */
final class ArraySource implements ByteSource {

  private final byte[] bytes;
  private final int size;

  /** The first bytes of an array, which is not copied. */
  ArraySource(byte[] bytes, int size) {
    this.bytes = bytes;
    this.size = size;
  }

  @Override
  public long size() {
    return size;
  }

  @Override
  public void read(long position, byte[] target, int offset, int length) {
    System.arraycopy(bytes, Math.toIntExact(position), target, offset, length);
  }

  @Override
  public void close() {
    // nothing is held
  }
}
