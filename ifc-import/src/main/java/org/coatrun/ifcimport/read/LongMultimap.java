package org.coatrun.ifcimport.read;

import java.util.Arrays;

/**
 * Numbers filed under numbers, in the order in which they were put; no number is negative.
 *
 * <p>Keys near each other stand near each other, as they are mostly asked for one after the other;
 * where that makes a crowd they are scattered.
 */
final class LongMultimap {

  private static final long[] NONE = {};

  /** Farther from its place no key stands, unless they are scattered. */
  private static final int CROWD = 32;

  private long[] keys = new long[64];
  private int[] heads = new int[64];
  private int[] tails = new int[64];
  private int used;
  private long[] values = new long[64];
  private int[] next = new int[64];
  private int entries;
  private long greatest;
  private int shift;
  private boolean scattered;

  /** How far any key stands from its place. */
  private int farthest;

  LongMultimap() {
    Arrays.fill(keys, -1);
  }

  void put(long key, long value) {
    int slot = slot(key);
    if (slot < 0) {
      slot = added(key);
      heads[slot] = entries;
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
    return slot < 0 ? -1 : values[heads[slot]];
  }

  /** All numbers under the key. */
  long[] all(long key) {
    int slot = slot(key);
    if (slot < 0) {
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

  /** Where a key stands, or −1. */
  private int slot(long key) {
    int at = place(key);
    for (int i = 0; i <= farthest && keys[at] >= 0; i++) {
      if (keys[at] == key) {
        return at;
      }
      at = (at + 1) & (keys.length - 1);
    }
    return -1;
  }

  private int place(long key) {
    long spread = scattered ? (key * 0x9E3779B97F4A7C15L) >>> 33 : key >>> shift;
    return (int) spread & (keys.length - 1);
  }

  /** The slot of a key that has none yet. */
  private int added(long key) {
    greatest = Math.max(greatest, key);
    if (2 * (used + 1) > keys.length) {
      rearrange(2 * keys.length);
    }
    used++;
    int slot = free(key);
    if (slot < 0) {
      scattered = true;
      rearrange(keys.length);
      slot = free(key);
    }
    keys[slot] = key;
    return slot;
  }

  /** The free slot nearest behind a key's place; −1 where that is in a crowd. */
  private int free(long key) {
    int at = place(key);
    int far = 0;
    for (; keys[at] >= 0; far++) {
      at = (at + 1) & (keys.length - 1);
    }
    if (far > CROWD && !scattered) {
      return -1;
    }
    farthest = Math.max(farthest, far);
    return at;
  }

  private void rearrange(int capacity) {
    long[] oldKeys = keys;
    int[] oldHeads = heads;
    int[] oldTails = tails;
    keys = new long[capacity];
    Arrays.fill(keys, -1);
    heads = new int[capacity];
    tails = new int[capacity];
    farthest = 0;
    int bits = Long.SIZE - Long.numberOfLeadingZeros(greatest);
    shift = Math.max(0, bits - Integer.numberOfTrailingZeros(capacity));
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldKeys[i] >= 0) {
        int slot = free(oldKeys[i]);
        if (slot < 0) {
          keys = oldKeys;
          heads = oldHeads;
          tails = oldTails;
          scattered = true;
          rearrange(capacity);
          return;
        }
        keys[slot] = oldKeys[i];
        heads[slot] = oldHeads[i];
        tails[slot] = oldTails[i];
      }
    }
  }
}
