package org.coatrun.testmodels.ifc;

/** The classes of elements that the generator writes, and what their records end with. */
public enum ElementKind {
  BEAM("IFCBEAM", Tail.KIND_SINCE_4),
  COLUMN("IFCCOLUMN", Tail.KIND_SINCE_4),
  MEMBER("IFCMEMBER", Tail.KIND_SINCE_4),
  PLATE("IFCPLATE", Tail.KIND_SINCE_4),
  WALL("IFCWALL", Tail.KIND_SINCE_4),
  CURTAIN_WALL("IFCCURTAINWALL", Tail.KIND_SINCE_4),
  OPENING("IFCOPENINGELEMENT", Tail.KIND_SINCE_4),
  PART("IFCBUILDINGELEMENTPART", Tail.KIND_SINCE_4),
  SLAB("IFCSLAB", Tail.KIND),
  FOOTING("IFCFOOTING", Tail.KIND),
  RAILING("IFCRAILING", Tail.KIND),
  COVERING("IFCCOVERING", Tail.KIND),
  STAIR("IFCSTAIR", Tail.KIND),
  ROOF("IFCROOF", Tail.KIND),
  PROXY("IFCBUILDINGELEMENTPROXY", Tail.PROXY),
  ASSEMBLY("IFCELEMENTASSEMBLY", Tail.ASSEMBLY),
  DOOR("IFCDOOR", Tail.DOOR),
  STAIR_FLIGHT("IFCSTAIRFLIGHT", Tail.FLIGHT),
  REINFORCING_BAR("IFCREINFORCINGBAR", Tail.BAR),
  FASTENER("IFCMECHANICALFASTENER", Tail.FASTENER);

  /** What follows the eight attributes that all elements share. */
  enum Tail {
    /** A predefined type in IFC4 and later, nothing before. */
    KIND_SINCE_4,
    /** A predefined type in each schema. */
    KIND,
    /** A composition type in IFC2X3, a predefined type later. */
    PROXY,
    ASSEMBLY,
    DOOR,
    FLIGHT,
    BAR,
    FASTENER
  }

  private final String entity;
  private final Tail tail;

  ElementKind(String entity, Tail tail) {
    this.entity = entity;
    this.tail = tail;
  }

  /** Returns the entity's name in the file. */
  public String entity() {
    return entity;
  }

  /** Returns the entity's name as the standard spells it where only the first letters matter. */
  String typeEntity() {
    return entity + "TYPE";
  }

  Tail tail() {
    return tail;
  }
}
