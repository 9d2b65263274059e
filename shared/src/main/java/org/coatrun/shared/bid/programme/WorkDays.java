package org.coatrun.shared.bid.programme;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.job.Job;

/** Puts together what happens on each working day. */
final class WorkDays {

  private static final double SLACK = 1e-7;

  private final FloorTimes times;
  private final List<Delivery> deliveries;
  private final WorkCalendar calendar;
  private final double shift;

  WorkDays(FloorTimes times, List<Delivery> deliveries, WorkCalendar calendar, Job job) {
    this.times = times;
    this.deliveries = deliveries;
    this.calendar = calendar;
    this.shift = job.labour().shift();
  }

  List<WorkDay> of(long[] opened) {
    List<WorkDay> days = new ArrayList<>();
    double hours = times.pace().hours();
    long stock = 0;
    int next = 0;
    while (next < deliveries.size() && deliveries.get(next).day() < 1) {
      stock += deliveries.get(next++).bags();
    }
    for (int i = 0; i < opened.length; i++) {
      boolean comes = next < deliveries.size() && deliveries.get(next).day() == i + 1;
      long delivered = comes ? deliveries.get(next).bags() : 0;
      int trucks = comes ? deliveries.get(next++).trucks() : 0;
      long bags = i == 0 ? opened[0] : opened[i] - opened[i - 1];
      stock += delivered - bags;
      double worked = Math.min(shift, hours - i * shift);
      days.add(
          new WorkDay(
              i + 1, calendar.date(i + 1), floors(i), worked, bags, delivered, trucks, stock));
    }
    return days;
  }

  private List<String> floors(int day) {
    double from = day * shift;
    double to = from + shift;
    return times.floors().stream()
        .filter(f -> f.begin() < to - SLACK && f.end() > from + SLACK)
        .map(FloorTime::floor)
        .toList();
  }
}
