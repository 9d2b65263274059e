package org.coatrun.ifcimport.part21;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;

/**
 * A file read through its channel, not mapped: a mapped temporary file could not be removed on
 * Windows while the program runs.
 */
final class ChannelSource implements ByteSource {

  private final String name;
  private final FileChannel channel;
  private final long size;

  /** Takes over the channel. */
  ChannelSource(String name, FileChannel channel) throws IOException {
    this.name = name;
    this.channel = channel;
    this.size = channel.size();
  }

  @Override
  public long size() {
    return size;
  }

  @Override
  public void read(long position, byte[] target, int offset, int length) {
    ByteBuffer buffer = ByteBuffer.wrap(target, offset, length);
    try {
      while (buffer.hasRemaining()) {
        if (channel.read(buffer, position + buffer.position() - offset) < 0) {
          throw new ModelFileException(name + " became shorter while it was being read; retry.");
        }
      }
    } catch (IOException e) {
      throw new ModelFileException(name + " can no longer be read; retry.", e);
    }
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException e) {
      throw new ModelFileException("a temporary file for " + name + " could not be removed.", e);
    }
  }
}
