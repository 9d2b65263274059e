package org.coatrun.ifcimport.part21;

import java.io.IOException;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileChannel.MapMode;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A file mapped into memory in segments, so that it may be of any size. */
final class MappedSource implements ByteSource {

  private static final int SHIFT = 30;
  private static final int SEGMENT = 1 << SHIFT;

  private final String name;
  private final long size;
  private final MappedByteBuffer[] segments;

  /** Maps a file; the mapping goes when the garbage collector finds it unused. */
  MappedSource(Path file) throws IOException {
    name = String.valueOf(file.getFileName());
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      size = channel.size();
      segments = new MappedByteBuffer[Math.toIntExact((size + SEGMENT - 1) >> SHIFT)];
      for (int i = 0; i < segments.length; i++) {
        long from = (long) i << SHIFT;
        segments[i] = channel.map(MapMode.READ_ONLY, from, Math.min(SEGMENT, size - from));
      }
    }
  }

  @Override
  public long size() {
    return size;
  }

  @Override
  public void read(long position, byte[] target, int offset, int length) {
    try {
      copy(position, target, offset, length);
    } catch (InternalError e) {
      throw new ModelFileException(
          name
              + " became shorter or unreachable while it was being read; copy it here, then retry.",
          e);
    }
  }

  private void copy(long position, byte[] target, int offset, int length) {
    int done = 0;
    while (done < length) {
      long at = position + done;
      MappedByteBuffer segment = segments[(int) (at >> SHIFT)];
      int inside = (int) (at & (SEGMENT - 1));
      int now = Math.min(length - done, segment.limit() - inside);
      segment.get(inside, target, offset + done, now);
      done += now;
    }
  }

  @Override
  public void close() {
    // a mapping cannot be undone safely while other threads may read
  }
}
