package org.coatrun.ifcimport.part21;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

/**
 * Unpacks one stream within limits of size and ratio: into memory while it is small, else into a
 * temporary file that goes when it is closed.
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
    Path file = Files.createTempFile("coatrun", ".ifc");
    try {
      write(in, first, file);
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.DELETE_ON_CLOSE);
      removeIfPossible(file);
      return new ChannelSource(name, channel);
    } catch (IOException | RuntimeException | Error e) {
      Files.deleteIfExists(file);
      throw e;
    }
  }

  /** An open file can be removed on most systems, and then goes even if the program is killed. */
  private static void removeIfPossible(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // then it goes when it is closed
    }
  }

  private void write(InputStream in, byte[] first, Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      out.write(first);
      long written = first.length;
      byte[] buffer = Arrays.copyOf(first, 1 << 16);
      int count = in.read(buffer);
      while (count >= 0) {
        written += count;
        if (written > most) {
          throw tooMuch();
        }
        out.write(buffer, 0, count);
        count = in.read(buffer);
      }
    }
  }

  private ModelFileException tooMuch() {
    return new ModelFileException(
        name
            + " unpacks to more than "
            + (most >> 20)
            + " MB, far more than a model packs; it is refused for safety, unpack it yourself.");
  }
}
