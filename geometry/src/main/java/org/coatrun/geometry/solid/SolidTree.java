package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * Original solids and how they make one body. Trees are never worked out step by step: {@link
 * Boundary} asks the originals, so that no result is ever sliced again.
 *
 * <p>A half-space appears as a solid large enough for its host ({@link HalfSpaces}).
 */
public sealed interface SolidTree {

  /** An original solid. */
  record Leaf(Solid solid) implements SolidTree {
    @Override
    public Box bounds() {
      return solid.bounds();
    }
  }

  /** All that is in at least one part. */
  record Union(List<SolidTree> parts) implements SolidTree {
    public Union {
      parts = List.copyOf(parts);
      if (parts.isEmpty()) {
        throw new IllegalArgumentException("a union of nothing");
      }
    }

    @Override
    public Box bounds() {
      Box box = Box.EMPTY;
      for (SolidTree part : parts) {
        box = box.plus(part.bounds());
      }
      return box;
    }
  }

  /** All that is in every part. */
  record Intersection(List<SolidTree> parts) implements SolidTree {
    public Intersection {
      parts = List.copyOf(parts);
      if (parts.isEmpty()) {
        throw new IllegalArgumentException("an intersection of nothing");
      }
    }

    @Override
    public Box bounds() {
      Box box = parts.get(0).bounds();
      for (SolidTree part : parts) {
        box = box.common(part.bounds());
      }
      return box;
    }
  }

  /** The host less all cutters. */
  record Difference(SolidTree host, List<SolidTree> cutters) implements SolidTree {
    public Difference {
      cutters = List.copyOf(cutters);
    }

    @Override
    public Box bounds() {
      return host.bounds();
    }
  }

  /** A box that the body does not leave: of a difference its host's. */
  Box bounds();

  /** The tree of one solid. */
  static SolidTree of(Solid solid) {
    return new Leaf(solid);
  }

  /** The host less one more cutter: chains of cuts become one flat difference. */
  static SolidTree less(SolidTree host, SolidTree cutter) {
    if (host instanceof Difference d) {
      var all = new ArrayList<>(d.cutters());
      all.add(cutter);
      return new Difference(d.host(), all);
    }
    return new Difference(host, List.of(cutter));
  }
}
