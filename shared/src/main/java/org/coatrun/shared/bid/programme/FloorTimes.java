package org.coatrun.shared.bid.programme;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.coatrun.shared.bid.labour.LabourBill;
import org.coatrun.shared.bid.labour.LabourSum;
import org.coatrun.shared.bid.material.MaterialBill;
import org.coatrun.shared.bid.material.MaterialOrder;
import org.coatrun.shared.bid.material.MaterialSum;
import org.coatrun.shared.job.Job;

/**
 * Lays floors one after the other. All machines work on one floor; on each, set-up comes first,
 * then spraying with its bags, then patching. A floor begins in the hour in which the one before it
 * is done.
 */
final class FloorTimes {

  /** Hours of rounding that do not open another day. */
  private static final double SLACK = 1e-7;

  private final Job job;
  private final WorkCalendar calendar;
  private final List<FloorTime> floors = new ArrayList<>();
  private final List<Pace.Stretch> stretches = new ArrayList<>();
  private double clock;

  private FloorTimes(Job job, WorkCalendar calendar) {
    this.job = job;
    this.calendar = calendar;
  }

  static FloorTimes of(MaterialBill material, LabourBill labour, Job job, WorkCalendar calendar) {
    FloorTimes times = new FloorTimes(job, calendar);
    Map<String, MaterialSum> sums = material.byFloor();
    labour
        .byFloor()
        .forEach(
            (floor, hours) -> {
              if (hours.crewHours() > 0) {
                times.add(floor, sums.get(floor), hours);
              }
            });
    return times;
  }

  private void add(String floor, MaterialSum sum, LabourSum hours) {
    double bags = MaterialOrder.of(sum, job.material()).exactBags();
    double begin = clock;
    stretch(hours.setUp(), 0);
    stretch(hours.spraying() + hours.waiting(), bags);
    stretch(hours.patching(), 0);
    int first = (int) Math.floor(begin / shift() + SLACK) + 1;
    int last = Math.max(first, (int) Math.ceil(clock / shift() - SLACK));
    floors.add(
        new FloorTime(
            floor,
            sum.inPlace(),
            bags,
            hours,
            begin,
            clock,
            first,
            last,
            calendar.date(first),
            calendar.date(last)));
  }

  private void stretch(double crewHours, double bags) {
    double hours = crewHours / job.machine().machines();
    stretches.add(new Pace.Stretch(hours, bags));
    clock += hours;
  }

  private double shift() {
    return job.labour().shift();
  }

  List<FloorTime> floors() {
    return floors;
  }

  Pace pace() {
    return new Pace(stretches);
  }

  int workingDays() {
    return floors.isEmpty() ? 0 : floors.get(floors.size() - 1).lastDay();
  }
}
