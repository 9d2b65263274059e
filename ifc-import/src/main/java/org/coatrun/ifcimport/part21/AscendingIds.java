package org.coatrun.ifcimport.part21;

import java.util.Arrays;

/** Ids that ascend through the file, as exporters mostly write them: no table is needed. */
final class AscendingIds implements Ids {

  private final RecordIndex index;

  /** The first id of each chunk; of one without records that of the next. */
  private final long[] firstIds;

  AscendingIds(RecordIndex index) {
    this.index = index;
    Chunk[] chunks = index.chunks();
    firstIds = new long[chunks.length];
    long next = Long.MAX_VALUE;
    for (int k = chunks.length - 1; k >= 0; k--) {
      next = chunks[k].count == 0 ? next : chunks[k].id(0);
      firstIds[k] = next;
    }
  }

  /** Whether the ids of all records ascend from chunk to chunk. */
  static boolean areIn(Chunk[] chunks) {
    long last = -1;
    for (Chunk c : chunks) {
      if (c.count > 0) {
        if (!c.isAscending() || c.id(0) <= last) {
          return false;
        }
        last = c.id(c.count - 1);
      }
    }
    return true;
  }

  @Override
  public int find(long id) {
    int at = Arrays.binarySearch(firstIds, id);
    int chunk = at >= 0 ? lastWithSame(at) : -at - 2;
    int inside = chunk < 0 ? -1 : index.chunks()[chunk].find(id);
    return inside < 0 ? -1 : index.first(chunk) + inside;
  }

  /** A chunk without records bears the id of the next. */
  private int lastWithSame(int chunk) {
    int last = chunk;
    while (last + 1 < firstIds.length && firstIds[last + 1] == firstIds[chunk]) {
      last++;
    }
    return last;
  }
}
