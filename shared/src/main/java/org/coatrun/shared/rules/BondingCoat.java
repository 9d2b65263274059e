package org.coatrun.shared.rules;

/**
 * Where a bonding coat goes on first: galvanised roof deck without concrete, and galvanised
 * cellular deck (common practice).
 */
public final class BondingCoat {

  private BondingCoat() {}

  /** Whether sprayed deck takes a bonding coat. */
  public static boolean needed(boolean galvanised, boolean cellular, boolean concreteAbove) {
    return galvanised && (cellular || !concreteAbove);
  }
}
