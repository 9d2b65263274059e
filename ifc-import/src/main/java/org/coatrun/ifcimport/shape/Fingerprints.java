package org.coatrun.ifcimport.shape;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.coatrun.ifcimport.entity.IfcModel;

/**
 * Tells records that are written alike, with all that they refer to, without decoding them: what
 * differs in numbers of records and blanks only has the same print. Safe for several threads.
 */
final class Fingerprints {

  private static final int MOST_RECORDS = 100_000;
  private static final int DEEPEST = 64;
  private static final byte[] MAP = "IFCREPRESENTATIONMAP(".getBytes(StandardCharsets.US_ASCII);

  /** A print of 128 bits: among a million bodies no two unlike ones share one by chance. */
  record Print(long first, long second) {}

  private final IfcModel model;

  /** Those of shapes that many elements share. */
  private final Map<Long, Print> maps = new ConcurrentHashMap<>();

  Fingerprints(IfcModel model) {
    this.model = model;
  }

  /** The print of items in their order; empty where some record cannot be told by its writing. */
  Optional<Print> of(long[] items) {
    Walk walk = new Walk(MOST_RECORDS, 0);
    for (long item : items) {
      if (!walk.record(item)) {
        return Optional.empty();
      }
    }
    return Optional.of(walk.print());
  }

  /** Goes through records, each before what it refers to. */
  private final class Walk {

    private int left;
    private int depth;
    private long first = 0xcbf29ce484222325L;
    private long second = 0x9e3779b97f4a7c15L;

    private Walk(int left, int depth) {
      this.left = left;
      this.depth = depth;
    }

    private Print print() {
      return new Print(first, second);
    }

    private boolean record(long id) {
      left--;
      if (left < 0 || depth > DEEPEST) {
        return false;
      }
      Optional<byte[]> written = model.file().written(id);
      if (written.isEmpty()) {
        return false;
      }
      int from = 1;
      while (from < written.get().length && written.get()[from] != '=') {
        from++;
      }
      return isMap(written.get(), from + 1)
          ? map(id, written.get(), from)
          : parameters(written.get(), from);
    }

    private boolean map(long id, byte[] written, int from) {
      Print known = maps.get(id);
      if (known != null) {
        put(known);
        return true;
      }
      Walk own = new Walk(left, depth);
      if (!own.parameters(written, from)) {
        return false;
      }
      left = own.left;
      maps.put(id, own.print());
      put(own.print());
      return true;
    }

    // Millions of bytes pass: the two sums are kept out of the object while they do.
    private boolean parameters(byte[] written, int from) {
      depth++;
      boolean text = false;
      int i = from;
      long a = first;
      long b = second;
      while (i < written.length) {
        byte c = written[i++];
        if (c == '\'') {
          text = !text;
        }
        if (text || (c > ' ' && c != '#' && c != '/')) {
          a = withFirst(a, c);
          b = withSecond(b, c);
        } else if (c == '/') {
          return false; // a comment
        } else if (c == '#') {
          long id = 0;
          while (i < written.length && written[i] >= '0' && written[i] <= '9') {
            id = 10 * id + written[i++] - '0';
          }
          first = a;
          second = b;
          if (!record(id)) {
            return false;
          }
          a = first;
          b = second;
        }
      }
      first = a;
      second = b;
      depth--;
      return true;
    }

    private void put(byte c) {
      first = withFirst(first, c);
      second = withSecond(second, c);
    }

    private static long withFirst(long sum, byte c) {
      return (sum ^ c) * 0x100000001b3L;
    }

    private static long withSecond(long sum, byte c) {
      return Long.rotateLeft((sum ^ c) * 0x9e3779b97f4a7c15L, 29);
    }

    private void put(Print print) {
      for (int shift = 0; shift < Long.SIZE; shift += Byte.SIZE) {
        put((byte) (print.first() >> shift));
        put((byte) (print.second() >> shift));
      }
    }
  }

  private static boolean isMap(byte[] written, int from) {
    for (int i = 0; i < MAP.length; i++) {
      if (from + i >= written.length || written[from + i] != MAP[i]) {
        return false;
      }
    }
    return true;
  }
}
