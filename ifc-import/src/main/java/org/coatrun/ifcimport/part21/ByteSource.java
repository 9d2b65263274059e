package org.coatrun.ifcimport.part21;

/** The bytes of a model, read at any place by any thread. */
interface ByteSource extends AutoCloseable {

  /** How many bytes there are. */
  long size();

  /**
   * Copies bytes to an array; all of them must lie inside.
   *
   * @throws ModelFileException where the file changed or cannot be read any more
   */
  void read(long position, byte[] target, int offset, int length);

  @Override
  void close();
}
