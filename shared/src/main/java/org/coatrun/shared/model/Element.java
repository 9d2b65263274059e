package org.coatrun.shared.model;

/** Anything of the building that has a body. */
public sealed interface Element permits Member, Deck, Slab, Wall, Bulk, Stair, Space, Opening {

  Identity identity();

  Body body();

  default ElementId id() {
    return identity().id();
  }
}
