package org.coatrun.routing.siting;

/** What the cells of one part pay for it: rows of numbers of zero or more. */
final class Shares {

  private Shares() {}

  /** The same from every cell that can use the part. */
  static double[] even(boolean[] reach, double cost) {
    int count = 0;
    for (boolean r : reach) {
      count += r ? 1 : 0;
    }
    double[] row = new double[reach.length];
    for (int c = 0; c < row.length; c++) {
      row[c] = reach[c] ? cost / count : 0;
    }
    return row;
  }

  /** On as at the last step, or a part of it. */
  static void drift(double[] row, double[] last, double momentum) {
    for (int c = 0; c < row.length; c++) {
      double now = row[c];
      row[c] = positivePart(now + momentum * (now - last[c]));
      last[c] = now;
    }
  }

  /** The nearest shares of zero or more that come to no more than the cost. */
  static void project(double[] row, double cost) {
    double cut = 0;
    double before;
    do {
      before = cut;
      double sum = 0;
      int count = 0;
      for (double s : row) {
        if (s > before) {
          sum += s;
          count++;
        }
      }
      cut = count == 0 ? before : Math.max(before, (sum - cost) / count);
    } while (cut > before);
    for (int c = 0; cut > 0 && c < row.length; c++) {
      row[c] = positivePart(row[c] - cut);
    }
  }

  /**
   * A finite number, or zero where it is less. Asked so often that the library's greater of two,
   * which the quick compiler makes a call of, took a fifth of a long search; a comparison would
   * keep the other compiler from taking several at once.
   */
  private static double positivePart(double number) {
    return 0.5 * (number + Math.abs(number));
  }

  static double[][] copy(double[][] rows) {
    double[][] same = new double[rows.length][];
    for (int n = 0; n < same.length; n++) {
      same[n] = rows[n].clone();
    }
    return same;
  }

  static void keep(double[][] from, double[][] to) {
    for (int n = 0; n < from.length; n++) {
      System.arraycopy(from[n], 0, to[n], 0, from[n].length);
    }
  }
}
