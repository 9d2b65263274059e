package org.coatrun.ifcimport.part21;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.StandardOpenOption;

/**
 * Unpacks one stream within limits of size and ratio: into memory while it is small, else into a
 * temporary file that goes with the program.
 */
final class Unpacker {

  /** Below this a high ratio does no harm. */
  private static final long HARMLESS = 16L << 20;

  private static final int IN_MEMORY = 32 << 20;

  private final String name;
  private final long most;

  /**
   * For a container.
   *
   * @param packed how many bytes the packed stream has
   */
  Unpacker(String name, long packed, StepOptions options) {
    this.name = name;
    long byRatio =
        packed > Long.MAX_VALUE / options.maxRatio() ? Long.MAX_VALUE : packed * options.maxRatio();
    this.most = Math.min(options.maxUnpackedBytes(), Math.max(byRatio, HARMLESS));
  }

  ByteSource unpack(InputStream in) throws IOException {
    byte[] memory = in.readNBytes((int) Math.min(most, IN_MEMORY));
    if (memory.length < IN_MEMORY && memory.length <= most) {
      return whole(in, memory);
    }
    return toFile(in, memory);
  }

  private ByteSource whole(InputStream in, byte[] memory) throws IOException {
    if (in.read() >= 0) {
      throw tooMuch();
    }
    return new ArraySource(memory, memory.length);
  }

  private ByteSource toFile(InputStream in, byte[] first) throws IOException {
    FileChannel channel = temporary();
    try {
      write(in, first, channel);
      return new ChannelSource(name, channel);
    } catch (IOException | RuntimeException | Error e) {
      channel.close();
      throw e;
    }
  }

  /**
   * A file that has no name any more on most systems, so that it goes with the program however that
   * ends; elsewhere it goes when it is closed.
   */
  private FileChannel temporary() {
    try {
      return FileChannel.open(
          Files.createTempFile("coatrun", ".ifc"),
          StandardOpenOption.READ,
          StandardOpenOption.WRITE,
          StandardOpenOption.DELETE_ON_CLOSE);
    } catch (IOException e) {
      throw noRoom(e);
    }
  }

  private void write(InputStream in, byte[] first, FileChannel out) throws IOException {
    write(out, first, first.length);
    long written = first.length;
    byte[] buffer = new byte[1 << 16];
    int count = in.read(buffer);
    while (count >= 0) {
      written += count;
      if (written > most) {
        throw tooMuch();
      }
      write(out, buffer, count);
      count = in.read(buffer);
    }
  }

  private void write(FileChannel out, byte[] bytes, int count) {
    ByteBuffer left = ByteBuffer.wrap(bytes, 0, count);
    try {
      while (left.hasRemaining()) {
        out.write(left);
      }
    } catch (IOException e) {
      throw noRoom(e);
    }
  }

  private ModelFileException noRoom(IOException cause) {
    return new ModelFileException(
        name
            + " cannot be unpacked into "
            + System.getProperty("java.io.tmpdir")
            + ", the folder for temporary files; make room there, or unpack it yourself.",
        cause);
  }

  private ModelFileException tooMuch() {
    return new ModelFileException(
        name
            + " unpacks to more than "
            + (most >> 20)
            + " MB, far more than a model packs; it is refused for safety, unpack it yourself.");
  }
}
