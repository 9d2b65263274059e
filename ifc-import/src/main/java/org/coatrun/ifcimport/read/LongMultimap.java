package org.coatrun.ifcimport.read;

import java.util.Arrays;

/** Numbers filed under numbers, in the order in which they were put; no number is negative. */
final class LongMultimap {

  private static final long[] NONE = {};

  private long[] keys = new long[64];
  private int[] heads = new int[64];
  private int[] tails = new int[64];
  private int used;
  private long[] values = new long[64];
  private int[] next = new int[64];
  private int entries;

  LongMultimap() {
    Arrays.fill(keys, -1);
  }

  void put(long key, long value) {
    int slot = slot(key);
    if (keys[slot] < 0) {
      if (2 * (used + 1) > keys.length) {
        grow();
        slot = slot(key);
      }
      keys[slot] = key;
      heads[slot] = entries;
      used++;
    } else {
      next[tails[slot]] = entries;
    }
    if (entries == values.length) {
      values = Arrays.copyOf(values, 2 * entries);
      next = Arrays.copyOf(next, 2 * entries);
    }
    values[entries] = value;
    next[entries] = -1;
    tails[slot] = entries++;
  }

  /** The first number under the key, or −1. */
  long first(long key) {
    int slot = slot(key);
    return keys[slot] < 0 ? -1 : values[heads[slot]];
  }

  /** All numbers under the key. */
  long[] all(long key) {
    int slot = slot(key);
    if (keys[slot] < 0) {
      return NONE;
    }
    int count = 0;
    for (int at = heads[slot]; at >= 0; at = next[at]) {
      count++;
    }
    long[] found = new long[count];
    int i = 0;
    for (int at = heads[slot]; at >= 0; at = next[at]) {
      found[i++] = values[at];
    }
    return found;
  }

  private int slot(long key) {
    int mask = keys.length - 1;
    int at = (int) ((key * 0x9E3779B97F4A7C15L) >>> 33) & mask;
    while (keys[at] >= 0 && keys[at] != key) {
      at = (at + 1) & mask;
    }
    return at;
  }

  private void grow() {
    long[] oldKeys = keys;
    int[] oldHeads = heads;
    int[] oldTails = tails;
    keys = new long[2 * oldKeys.length];
    Arrays.fill(keys, -1);
    heads = new int[keys.length];
    tails = new int[keys.length];
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldKeys[i] >= 0) {
        int slot = slot(oldKeys[i]);
        keys[slot] = oldKeys[i];
        heads[slot] = oldHeads[i];
        tails[slot] = oldTails[i];
      }
    }
  }
}
