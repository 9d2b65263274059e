package org.coatrun.routing.siting;

/**
 * A floor to be covered, or several that are alike in all that matters here.
 *
 * @param times how many floors it stands for
 * @param weight for each cell, what one metre of flexible hose costs the material sprayed there
 * @param hose for each outlet, the hose to each cell in metres; infinite where none leads there
 */
public record CoverFloor(int times, double[] weight, double[][] hose) {
  public CoverFloor {
    if (times < 1) {
      throw new IllegalArgumentException("a floor that stands for " + times + " floors");
    }
    for (double[] row : hose) {
      if (row.length != weight.length) {
        throw new IllegalArgumentException("hose to " + row.length + " of " + weight.length);
      }
    }
  }

  int cells() {
    return weight.length;
  }
}
