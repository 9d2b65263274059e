package org.coatrun.ifcimport.part21;

import java.util.SplittableRandom;

/** Ids in any order: a plain array where ids lie close, else a hash table. */
final class IdTable implements Ids {

  /** Told of a record whose id an earlier one carries. */
  interface Duplicates {
    void duplicate(int first, int second);
  }

  private final RecordIndex index;

  /** Record number plus one at the id's slot; 0 is empty. */
  private final int[] slots;

  private final boolean direct;

  /** Unforeseeable, so that no file can be made whose ids all share a slot. */
  private final long factor = new SplittableRandom().nextLong() | 1;

  private IdTable(RecordIndex index, int[] slots, boolean direct) {
    this.index = index;
    this.slots = slots;
    this.direct = direct;
  }

  static IdTable of(RecordIndex index, Duplicates duplicates) {
    long largest = -1;
    for (Chunk c : index.chunks()) {
      for (int i = 0; i < c.count; i++) {
        largest = Math.max(largest, c.id(i));
      }
    }
    boolean direct = largest < 4L * index.size() + 1024;
    int size = direct ? (int) (largest + 1) : tableSize(index.size());
    IdTable table = new IdTable(index, new int[size], direct);
    table.fill(duplicates);
    return table;
  }

  /** A power of two at least half again the number of records. */
  private static int tableSize(int records) {
    return Integer.highestOneBit(Math.max(16, Math.min(records + (records >> 1), 1 << 29))) << 1;
  }

  private void fill(Duplicates duplicates) {
    Chunk[] chunks = index.chunks();
    for (int k = 0; k < chunks.length; k++) {
      Chunk c = chunks[k];
      for (int i = 0; i < c.count; i++) {
        int slot = slot(c.id(i));
        int number = index.first(k) + i;
        if (slots[slot] == 0) {
          slots[slot] = number + 1;
        } else {
          duplicates.duplicate(slots[slot] - 1, number);
        }
      }
    }
  }

  @Override
  public int find(long id) {
    if (id < 0 || (direct && id >= slots.length)) {
      return -1;
    }
    return slots[slot(id)] - 1;
  }

  /** The slot that holds an id or where it would go. */
  private int slot(long id) {
    if (direct) {
      return (int) id;
    }
    long mixed = id * factor;
    int slot = (int) (mixed >>> 33) & (slots.length - 1);
    while (slots[slot] != 0 && index.id(slots[slot] - 1) != id) {
      slot = (slot + 1) & (slots.length - 1);
    }
    return slot;
  }
}
