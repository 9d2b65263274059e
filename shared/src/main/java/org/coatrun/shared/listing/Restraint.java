package org.coatrun.shared.listing;

/** Which ratings an entry of a listing holds for. */
public enum Restraint {
  RESTRAINED,
  UNRESTRAINED,
  EITHER;

  /** Whether an entry serves a member that is, or is not, to be rated restrained. */
  public boolean serves(boolean restrained) {
    return this == EITHER || (this == RESTRAINED) == restrained;
  }
}
