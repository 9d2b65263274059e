package org.coatrun.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.coatrun.shared.bid.programme.Delivery;
import org.coatrun.shared.bid.programme.FloorCheck;
import org.coatrun.shared.bid.programme.FloorTime;
import org.coatrun.shared.bid.programme.ProgrammePlan;
import org.coatrun.shared.bid.programme.WorkDay;

/** The rows of programme.csv: each working day, and days before the first on which trucks come. */
final class ProgrammeColumns {

  static final List<Column<WorkDay>> DAYS =
      List.of(
          Column.of("day", WorkDay::day),
          Column.of("date", day -> date(day.date())),
          Column.of("floors", day -> String.join("; ", day.floors())),
          Column.of("hours", day -> Rounded.plain(day.hours())),
          Column.of("bags", WorkDay::bags),
          Column.of("bags_delivered", WorkDay::delivered),
          Column.of("trucks", WorkDay::trucks),
          Column.of("stock_bags", WorkDay::stock));

  static final List<Column<FloorTime>> FLOORS =
      List.of(
          Column.of("floor", FloorTime::floor),
          Column.of("first_day", FloorTime::firstDay),
          Column.of("last_day", FloorTime::lastDay),
          Column.of("first_date", floor -> date(floor.firstDate())),
          Column.of("last_date", floor -> date(floor.lastDate())),
          Column.of("in_place_m3", floor -> Rounded.fine(floor.inPlace().cubicMetres())),
          Column.of("bags", floor -> Rounded.plain(floor.exactBags())),
          Column.of("crew_hours", floor -> Rounded.plain(floor.crewHours().crewHours())));

  static final List<Column<Delivery>> DELIVERIES =
      List.of(
          Column.of("day", Delivery::day),
          Column.of("date", delivery -> date(delivery.date())),
          Column.of("trucks", Delivery::trucks),
          Column.of("pallets", Delivery::pallets),
          Column.of("bags", Delivery::bags),
          Column.of("last_use_day", Delivery::lastUse),
          Column.of("kept_days", Delivery::keptDays));

  private ProgrammeColumns() {}

  /** Of programme.csv: the same, and on the first day of a floor what is checked before it. */
  static List<Column<WorkDay>> daysWithChecks(ProgrammePlan plan) {
    List<Column<WorkDay>> columns = new ArrayList<>(DAYS);
    columns.add(Column.of("checks_before", day -> checks(plan, day.day())));
    return columns;
  }

  private static String checks(ProgrammePlan plan, int day) {
    Map<String, String> byFloor =
        plan.checks().stream()
            .filter(check -> check.firstDay() == day)
            .collect(
                Collectors.groupingBy(
                    FloorCheck::floor,
                    LinkedHashMap::new,
                    Collectors.mapping(FloorCheck::check, Collectors.joining("; "))));
    return byFloor.entrySet().stream()
        .map(floor -> floor.getKey() + ": " + floor.getValue())
        .collect(Collectors.joining(" / "));
  }

  static List<WorkDay> days(ProgrammePlan plan) {
    List<WorkDay> days = new ArrayList<>();
    long stock = 0;
    for (Delivery d : plan.deliveries()) {
      if (d.day() < 1) {
        stock += d.bags();
        days.add(new WorkDay(d.day(), d.date(), List.of(), 0, 0, d.bags(), d.trucks(), stock));
      }
    }
    days.addAll(plan.days());
    return days;
  }

  private static String date(Optional<LocalDate> date) {
    return date.map(LocalDate::toString).orElse("");
  }
}
