package org.coatrun.shared.bid.programme;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.coatrun.shared.job.Programme;
import org.coatrun.shared.job.Weekday;

/**
 * Working days by number: day 1 is the first working day on or after the start, day 0 the working
 * day before it. Holidays are not known.
 */
public final class WorkCalendar {

  /** A Monday, to count calendar days by where the job states no start. */
  private static final LocalDate NOMINAL = LocalDate.of(2001, 1, 1);

  private static final int WEEK = 7;

  private final Optional<LocalDate> start;
  private final List<LocalDate> week;

  private WorkCalendar(Optional<LocalDate> start, List<LocalDate> week) {
    this.start = start;
    this.week = week;
  }

  /** The calendar of a job. */
  public static WorkCalendar of(Programme programme) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (Weekday day : programme.days()) {
      days.add(DayOfWeek.valueOf(day.name()));
    }
    LocalDate from = programme.start().orElse(NOMINAL);
    List<LocalDate> week =
        from.datesUntil(from.plusDays(WEEK)).filter(d -> days.contains(d.getDayOfWeek())).toList();
    return new WorkCalendar(programme.start(), week);
  }

  /** The date of a working day; empty where the job states no start. */
  public Optional<LocalDate> date(int day) {
    return start.map(known -> counted(day));
  }

  /** Calendar days from one working day to another. */
  public long calendarDays(int from, int to) {
    return ChronoUnit.DAYS.between(counted(from), counted(to));
  }

  /** A working day as people say it: its number, with its date where that is known. */
  public String word(int day) {
    return "day " + day + date(day).map(d -> " (" + d + ")").orElse("");
  }

  private LocalDate counted(int day) {
    int weeks = Math.floorDiv(day - 1, week.size());
    return week.get(Math.floorMod(day - 1, week.size())).plusWeeks(weeks);
  }
}
