package org.coatrun.ifcimport.shape;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
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
  private static final int LONGEST = 1 << 16;
  private static final byte[] MAP = "IFCREPRESENTATIONMAP(".getBytes(StandardCharsets.US_ASCII);

  /** A print of 128 bits: among a million bodies no two unlike ones share one by chance. */
  record Print(long first, long second) {

    // Written out: see the conventions in DEVELOPERS.md.

    @Override
    public boolean equals(Object other) {
      return other instanceof Print o && first == o.first && second == o.second;
    }

    @Override
    public int hashCode() {
      return Long.hashCode(first);
    }
  }

  private final IfcModel model;

  /** Those of shapes that many elements share. */
  private final Map<Long, Print> maps = new ConcurrentHashMap<>();

  private final ThreadLocal<Walk> walks = ThreadLocal.withInitial(Walk::new);

  Fingerprints(IfcModel model) {
    this.model = model;
  }

  /** The print of items in their order; empty where some record cannot be told by its writing. */
  Optional<Print> of(long[] items) {
    return walks.get().print(items);
  }

  /**
   * Goes through records. The print of each is of its writing, its references without their
   * numbers, and of the prints of what it refers to: so a record that is met again soon need not be
   * read again.
   */
  private final class Walk {

    private static final int KEPT = 1024;
    private static final long FIRST = 0xcbf29ce484222325L;
    private static final long SECOND = 0x9e3779b97f4a7c15L;

    private final byte[] written = new byte[LONGEST];

    /** Records still to be met, of those that are being gone through. */
    private long[] ahead = new long[64];

    private int aheadCount;
    private int left;
    private int depth;

    /** The print of the record gone through last. */
    private long first;

    private long second;

    /** Prints of records met lately, each in the place that its number gives. */
    private final long[] recent = new long[KEPT];

    private final long[] recentFirst = new long[KEPT];
    private final long[] recentSecond = new long[KEPT];

    private Walk() {
      Arrays.fill(recent, -1);
    }

    private Optional<Print> print(long[] items) {
      left = MOST_RECORDS;
      depth = 0;
      aheadCount = 0;
      first = FIRST;
      second = SECOND;
      for (long item : items) {
        meet(item);
      }
      return withAll(0) ? Optional.of(new Print(first, second)) : Optional.empty();
    }

    private void meet(long id) {
      if (aheadCount == ahead.length) {
        ahead = Arrays.copyOf(ahead, 2 * aheadCount);
      }
      ahead[aheadCount++] = id;
    }

    /** Adds the prints of the records ahead from a place on; false where one has none. */
    private boolean withAll(int from) {
      long a = first;
      long b = second;
      int to = aheadCount;
      for (int i = from; i < to; i++) {
        if (!record(ahead[i])) {
          return false;
        }
        a = withFirst(a, first);
        b = withSecond(b, second);
      }
      aheadCount = from;
      first = a;
      second = b;
      return true;
    }

    private boolean record(long id) {
      int place = (int) (id & (KEPT - 1));
      if (recent[place] == id) {
        first = recentFirst[place];
        second = recentSecond[place];
        return true;
      }
      if (!read(id)) {
        return false;
      }
      recent[place] = id;
      recentFirst[place] = first;
      recentSecond[place] = second;
      return true;
    }

    private boolean read(long id) {
      left--;
      int length = model.file().written(id, written);
      if (left < 0 || depth > DEEPEST || length < 0) {
        return false;
      }
      int from = 1;
      while (from < length && written[from] != '=') {
        from++;
      }
      return isMap(from + 1, length) ? map(id, from, length) : all(from, length);
    }

    private boolean map(long id, int from, int length) {
      Print known = maps.get(id);
      if (known != null) {
        first = known.first();
        second = known.second();
        return true;
      }
      if (!all(from, length)) {
        return false;
      }
      maps.put(id, new Print(first, second));
      return true;
    }

    private boolean isMap(int from, int length) {
      return from + MAP.length <= length
          && Arrays.equals(written, from, from + MAP.length, MAP, 0, MAP.length);
    }

    /** The record as written, then what it refers to. */
    private boolean all(int from, int length) {
      int before = aheadCount;
      if (!parameters(from, length)) {
        return false;
      }
      depth++;
      boolean complete = withAll(before);
      depth--;
      return complete;
    }

    // Millions of bytes pass: they are taken eight at a time, and the two sums are kept out of the
    // object while they are.
    private boolean parameters(int from, int length) {
      byte[] bytes = written;
      boolean text = false;
      long a = FIRST;
      long b = SECOND;
      long eight = 0;
      int count = 0;
      int i = from;
      while (i < length) {
        byte c = bytes[i++];
        if (c == '\'') {
          text = !text;
        }
        if (!text) {
          if (c == '/') {
            return false; // a comment
          }
          if (c <= ' ') {
            continue;
          }
          if (c == '#') {
            i = reference(i, length);
          }
        }
        eight = eight << Byte.SIZE | (c & 0xff);
        if ((++count & 7) == 0) {
          a = withFirst(a, eight);
          b = withSecond(b, eight);
        }
      }
      first = withFirst(withFirst(a, eight), count);
      second = withSecond(withSecond(b, eight), count);
      return true;
    }

    /** Meets the record whose number stands at a place; gives the place behind it. */
    private int reference(int from, int length) {
      int i = from;
      long id = 0;
      while (i < length && written[i] >= '0' && written[i] <= '9') {
        id = 10 * id + written[i++] - '0';
      }
      meet(id);
      return i;
    }

    private static long withFirst(long sum, long word) {
      return Long.rotateLeft((sum ^ word) * 0xff51afd7ed558ccdL, 31);
    }

    private static long withSecond(long sum, long word) {
      return Long.rotateLeft((sum ^ word) * 0x9e3779b97f4a7c15L, 29);
    }
  }
}
