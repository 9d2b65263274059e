package org.coatrun.ifcimport.part21;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.coatrun.shared.finding.FileFinding;

/** What the scanner found in one piece of the file: plain arrays, a few bytes a record. */
final class Chunk implements StatementSink {

  /** A piece of a model never holds that many statements that are no records. */
  static final int MOST_OTHERS = 100_000;

  final long begin;
  final long until;

  int count;
  long[] ids = {};
  int[] offsets = {};
  int[] names = {};

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
    int likely = (int) Math.min(1 << 20, (until - begin) / 40 + 8);
    ids = new long[likely];
    offsets = new int[likely];
    names = new int[likely];
    count = 0;
    otherCount = 0;
    tooManyOthers = false;
    complex = false;
    faults.clear();
    first = from;
    next = scanner.scan(from, until, this);
    open = scanner.open();
    ids = Arrays.copyOf(ids, count);
    offsets = Arrays.copyOf(offsets, count);
    names = Arrays.copyOf(names, count);
  }

  long position(int i) {
    return begin + offsets[i];
  }

  @Override
  public void record(long position, long id, int name) {
    if (count == ids.length) {
      int larger = count + (count >> 1) + 8;
      ids = Arrays.copyOf(ids, larger);
      offsets = Arrays.copyOf(offsets, larger);
      names = Arrays.copyOf(names, larger);
    }
    complex |= name == NameTable.COMPLEX;
    ids[count] = id;
    offsets[count] = (int) (position - begin);
    names[count++] = name;
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
