package org.coatrun.ifcimport.shape;

import java.util.function.Supplier;

/**
 * Keeps what refers to itself, goes too deep or uses shared parts too often from being followed for
 * ever. What was read before counts again each time that it is used, so that the outcome does not
 * depend on what another body read first.
 */
final class Depth {

  /** Real models nest a few dozen booleans; this leaves room and stays within a thread's stack. */
  static final int MOST = 300;

  /** Items of one body; a few records that use each other twice would make millions. */
  static final int MOST_ITEMS = 10_000;

  /** Profiles and curves take more of the stack, and nest but a few times. */
  private static final int CURVE_LEVELS = 6;

  private static final int MOST_WEIGHT = 1_000_000;
  private static final int ITEM_WEIGHT = MOST_WEIGHT / MOST_ITEMS;

  private int depth;
  private int deepest;
  private int weight;

  /** What was read, how deep below its place it went and how much it is. */
  record Measured<T>(T read, int height, int weight) {}

  /** Reads an item of a body. */
  <T> T item(Supplier<T> work) {
    return within(1, ITEM_WEIGHT, work);
  }

  /** Reads a profile or a curve. */
  <T> T within(Supplier<T> work) {
    return within(CURVE_LEVELS, 1, work);
  }

  private <T> T within(int levels, int more, Supplier<T> work) {
    add(levels, more);
    depth += levels;
    try {
      return work.get();
    } finally {
      depth -= levels;
    }
  }

  /** Reads what may be used again. */
  <T> Measured<T> measured(Supplier<T> work) {
    int outer = deepest;
    int before = weight;
    deepest = depth;
    T read = work.get();
    var measured = new Measured<T>(read, deepest - depth, weight - before);
    deepest = Math.max(outer, deepest);
    return measured;
  }

  /** Uses again what was read before. */
  <T> T again(Measured<T> known) {
    add(known.height(), known.weight());
    return known.read();
  }

  private void add(int levels, int more) {
    if (depth + levels > MOST || weight + more > MOST_WEIGHT) {
      throw new EndlessShapeException();
    }
    deepest = Math.max(deepest, depth + levels);
    weight += more;
  }
}
