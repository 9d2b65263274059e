package org.coatrun.ifcimport.shape;

import java.util.function.Supplier;
import org.coatrun.ifcimport.entity.Entity;

/** Keeps records that refer to themselves, or go too deep, from being followed for ever. */
final class Depth {

  /** Real models nest a few dozen booleans; this leaves room and stays within a thread's stack. */
  static final int MOST = 300;

  private int depth;

  <T> T within(Entity of, Supplier<T> work) {
    if (depth >= MOST) {
      throw of.broken("it is nested more than " + MOST + " deep, or refers to itself");
    }
    depth++;
    try {
      return work.get();
    } finally {
      depth--;
    }
  }
}
