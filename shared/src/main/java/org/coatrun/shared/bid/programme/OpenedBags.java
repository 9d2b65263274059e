package org.coatrun.shared.bid.programme;

/** Whole bags opened by the end of each working day, from day 1. */
final class OpenedBags {

  private final long[] byDay;

  /**
   * @param byDay never falling; the first item is for day 1
   */
  OpenedBags(long[] byDay) {
    this.byDay = byDay.clone();
  }

  int days() {
    return byDay.length;
  }

  /** Bags opened by the end of a day: none before day 1, all after the last. */
  long by(int day) {
    return day < 1 ? 0 : byDay[Math.min(day, byDay.length) - 1];
  }

  long all() {
    return by(byDay.length);
  }

  /** The day that opens a bag, counted from 1. */
  int dayThatOpens(long bag) {
    int low = 1;
    int high = byDay.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (by(middle) >= bag) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** The last day, 0 if none, to which a count of calendar days from {@code from} is in time. */
  int lastWithin(int from, long calendarDays, WorkCalendar calendar) {
    int low = 0;
    int high = byDay.length;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (calendar.calendarDays(from, middle) <= calendarDays) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }
}
