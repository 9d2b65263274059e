package org.coatrun.cli.report;

import java.util.List;

/** What every output says about its own limits. */
public final class Cautions {

  /** In full: for files. */
  public static final List<String> ALL =
      List.of(
          "This is a planning aid. It does not replace the judgement of those who answer for the"
              + " work.",
          "Ratings and thickness follow the tested listing, the adopted code and the engineer of"
              + " record; local codes govern.",
          "The maker's manual governs how the material is applied.",
          "Electrical work, lifts, scaffolds and work at an open edge need licensed or competent"
              + " persons.",
          "Dust needs respirators (N95 or better), eye and skin protection, and ventilation.",
          "Elements listed as unresolved are not in the sums: look at each of them.");

  /** In one line: for the screen. */
  public static final String SHORT =
      "A planning aid: the tested listing, the adopted code and the engineer of record govern.";

  private Cautions() {}
}
