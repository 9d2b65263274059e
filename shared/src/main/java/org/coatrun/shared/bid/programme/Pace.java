package org.coatrun.shared.bid.programme;

import java.util.List;
import org.coatrun.shared.rules.Bags;

/**
 * How bags are used over the hours of a programme: stretches of even use, one after the other.
 *
 * @param stretches in order
 */
record Pace(List<Stretch> stretches) {

  /** Hours in which so many bags are used, evenly. */
  record Stretch(double hours, double bags) {}

  Pace {
    stretches = List.copyOf(stretches);
  }

  double hours() {
    return stretches.stream().mapToDouble(Stretch::hours).sum();
  }

  /**
   * Whole bags opened by the end of each day: the first item for day 1. A bag that is begun counts.
   */
  long[] openedByDay(int days, double shift) {
    long[] opened = new long[days];
    double passed = 0;
    double used = 0;
    int day = 0;
    for (Stretch stretch : stretches) {
      while (day < days && (day + 1) * shift < passed + stretch.hours()) {
        double part = ((day + 1) * shift - passed) / stretch.hours();
        opened[day++] = Bags.whole(used + part * stretch.bags());
      }
      passed += stretch.hours();
      used += stretch.bags();
    }
    while (day < days) {
      opened[day++] = Bags.whole(used);
    }
    return opened;
  }
}
