package org.coatrun.shared.rules;

/** Occupancy groups of IBC chapter 3, as far as the roof rule of Table 601 tells them apart. */
public enum Occupancy {
  A("A"),
  B("B"),
  E("E"),
  F_1("F-1"),
  F_2("F-2"),
  H("H"),
  I("I"),
  M("M"),
  R("R"),
  S_1("S-1"),
  S_2("S-2"),
  U("U");

  private final String group;

  Occupancy(String group) {
    this.group = group;
  }

  /** The group as the code writes it, such as {@code S-1}. */
  public String group() {
    return group;
  }

  /** Whether roof members stay protected however high they are (IBC Table 601, footnote b). */
  public boolean protectsHighRoofs() {
    return this == F_1 || this == H || this == M || this == S_1;
  }

  /** As files write it. */
  @Override
  public String toString() {
    return group;
  }
}
