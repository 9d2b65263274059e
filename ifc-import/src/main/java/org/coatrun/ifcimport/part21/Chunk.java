package org.coatrun.ifcimport.part21;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.coatrun.shared.finding.FileFinding;

/**
 * What the scanner found in one piece of the file: plain arrays, eight bytes a record or a few
 * more.
 */
final class Chunk implements StatementSink {

  /** A piece of a model never holds that many statements that are no records. */
  static final int MOST_OTHERS = 100_000;

  private static final int LIKELY_LENGTH = 40;
  private static final double MUCH_USED = 0.7;

  final long begin;
  final long until;

  int count;
  int[] offsets = {};
  int[] names = {};

  /** Null as long as each id is one more than the last: then the first tells all. */
  private long[] ids;

  private long firstId;
  private boolean ascending;

  long[] others = new long[8];
  int otherCount;
  boolean tooManyOthers;

  /** Whether complex instances are among the records. */
  boolean complex;

  final Map<FileFinding, Faults> faults = new EnumMap<>(FileFinding.class);

  /** Places and ids of the first faults of one kind. */
  static final class Faults {
    long[] positions = new long[8];
    long[] ids = new long[8];
    int count;
    boolean more;
  }

  private long first = -1;
  private long next = -1;
  private long open = -1;

  /** A piece from one position up to before another. */
  Chunk(long begin, long until) {
    this.begin = begin;
    this.until = until;
  }

  /** Says where the first statement begins, where that is known. */
  void guess(long beginning) {
    first = beginning;
  }

  /** Where the scan began, or -1 where there was no scan. */
  long first() {
    return first;
  }

  /** Where the first statement behind this piece begins. */
  long next() {
    return next;
  }

  /** Where the statement begins that the end of the file cuts, or -1. */
  long open() {
    return open;
  }

  /** Scans from where a record seems to begin, if anywhere. */
  void scanFromGuess(StatementScanner scanner) {
    long from = first >= 0 ? first : scanner.guessBeginning(begin, until);
    if (from >= 0) {
      scan(scanner, from);
    }
  }

  /** Scans from the beginning of a statement on; what was found before is forgotten. */
  void scan(StatementScanner scanner, long from) {
    int likely = (int) Math.min(1 << 20, (until - begin) / LIKELY_LENGTH + 8);
    offsets = new int[likely];
    names = new int[likely];
    ids = null;
    ascending = true;
    count = 0;
    otherCount = 0;
    tooManyOthers = false;
    complex = false;
    faults.clear();
    first = from;
    next = scanner.scan(from, until, this);
    open = scanner.open();
    if (count < offsets.length * MUCH_USED) {
      resize(count);
    }
  }

  private void resize(int size) {
    offsets = Arrays.copyOf(offsets, size);
    names = Arrays.copyOf(names, size);
    ids = ids == null ? null : Arrays.copyOf(ids, size);
  }

  long position(int i) {
    return begin + offsets[i];
  }

  long id(int i) {
    return ids == null ? firstId + i : ids[i];
  }

  /** Whether each id is above the one before it. */
  boolean isAscending() {
    return ascending;
  }

  /** Which record has an id, -1 where none has; only of ascending ones. */
  int find(long id) {
    if (ids != null) {
      return Math.max(-1, Arrays.binarySearch(ids, 0, count, id));
    }
    return id >= firstId && id - firstId < count ? (int) (id - firstId) : -1;
  }

  @Override
  public void record(long position, long id, int name) {
    if (count == offsets.length) {
      resize(count + (count >> 1) + 8);
    }
    complex |= name == NameTable.COMPLEX;
    keep(id);
    offsets[count] = (int) (position - begin);
    names[count++] = name;
  }

  private void keep(long id) {
    if (count == 0) {
      firstId = id;
    } else if (ids == null && id != firstId + count) {
      ids = new long[offsets.length];
      Arrays.setAll(ids, i -> firstId + i);
    }
    if (ids != null) {
      ids[count] = id;
      ascending &= id > ids[count - 1];
    }
  }

  @Override
  public void other(long position) {
    if (otherCount == others.length && otherCount < MOST_OTHERS) {
      others = Arrays.copyOf(others, 2 * otherCount);
    }
    if (otherCount == MOST_OTHERS) {
      tooManyOthers = true;
    } else {
      others[otherCount++] = position;
    }
  }

  @Override
  public void fault(FileFinding code, long position, long id) {
    Faults f = faults.computeIfAbsent(code, c -> new Faults());
    if (f.count == FindingLog.MOST) {
      f.more = true;
      return;
    }
    if (f.count == f.positions.length) {
      f.positions = Arrays.copyOf(f.positions, 2 * f.count);
      f.ids = Arrays.copyOf(f.ids, 2 * f.count);
    }
    f.positions[f.count] = position;
    f.ids[f.count++] = id;
  }
}
