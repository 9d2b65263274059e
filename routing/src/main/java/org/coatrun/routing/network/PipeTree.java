package org.coatrun.routing.network;

import java.util.Arrays;

/**
 * The runs from one start to several places, as a tree of stretches.
 *
 * @param before for each stretch, the one that it goes on from, at a lower place; −1 at the start
 * @param length of each stretch, in metres
 * @param last for each place, the last stretch of its run; −1 where no run leads there
 */
public record PipeTree(int[] before, double[] length, int[] last) {

  /** The same with stretches joined where nothing parts or ends. */
  PipeTree joined() {
    boolean[] ends = new boolean[before.length];
    int[] onward = new int[before.length];
    Arrays.stream(last).filter(n -> n >= 0).forEach(n -> ends[n] = true);
    Arrays.stream(before).filter(n -> n >= 0).forEach(n -> onward[n]++);
    int[] from = new int[before.length];
    double[] along = new double[before.length];
    int[] place = new int[before.length];
    int kept = 0;
    for (int n = 0; n < before.length; n++) {
      int b = before[n];
      boolean goesOn = b >= 0 && place[b] < 0;
      from[n] = b < 0 ? -1 : goesOn ? from[b] : place[b];
      along[n] = length[n] + (goesOn ? along[b] : 0);
      place[n] = ends[n] || onward[n] != 1 ? kept++ : -1;
    }
    int[] newBefore = new int[kept];
    double[] newLength = new double[kept];
    for (int n = 0; n < before.length; n++) {
      if (place[n] >= 0) {
        newBefore[place[n]] = from[n];
        newLength[place[n]] = along[n];
      }
    }
    int[] newLast = Arrays.stream(last).map(n -> n < 0 ? -1 : place[n]).toArray();
    return new PipeTree(newBefore, newLength, newLast);
  }
}
