package org.coatrun.shared.bid.programme;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.job.Cold;
import org.coatrun.shared.rules.ColdRule.Judgement;
import org.coatrun.shared.rules.Numbers;
import org.coatrun.shared.units.Temperature;

/**
 * Judges working days by the cold-weather rule against a record of temperatures. Work begins at 7
 * in the morning (common practice). The record is taken as it stands: of air or of steel is for the
 * user to know.
 */
final class ColdDays {

  /** When a working day begins (common practice). */
  static final LocalTime MORNING = LocalTime.of(7, 0);

  private static final double MINUTES = 60;

  private ColdDays() {}

  static List<Finding> of(
      List<WorkDay> days,
      NavigableMap<LocalDateTime, Temperature> record,
      Cold cold,
      double shift) {
    List<Finding> findings = new ArrayList<>();
    if (!days.isEmpty() && days.get(0).date().isEmpty()) {
      findings.add(
          Finding.of(
              WorkFinding.TEMPERATURES_MISSING,
              "Temperatures are given, and programme.start is not: no day can be judged."));
      return findings;
    }
    for (WorkDay day : days) {
      LocalDate date = day.date().orElseThrow();
      LocalDateTime begin = date.atTime(MORNING);
      LocalDateTime end = begin.plusMinutes(Math.round(Math.min(day.hours(), shift) * MINUTES));
      Judgement judgement = cold.rule().judge(begin, end, record);
      if (judgement instanceof Judgement.Cold c) {
        findings.add(tooCold(day, c, cold));
      } else if (judgement instanceof Judgement.Unknown u) {
        findings.add(missing(day, u));
      }
    }
    return findings;
  }

  private static Finding tooCold(WorkDay day, Judgement.Cold found, Cold cold) {
    return Finding.of(
        WorkFinding.COLD_DAY,
        where(day)
            + degrees(found.temperature())
            + " at "
            + clock(found.at().toString())
            + "; least is "
            + degrees(cold.least())
            + " from "
            + cold.before()
            + " h before to "
            + cold.after()
            + " h after work.");
  }

  private static Finding missing(WorkDay day, Judgement.Unknown found) {
    return Finding.of(WorkFinding.TEMPERATURES_MISSING, where(day) + clock(found.missing()) + ".");
  }

  private static String where(WorkDay day) {
    String floors = String.join(" and ", day.floors());
    return day.date().orElseThrow() + " (day " + day.day() + ", " + floors + "): ";
  }

  /** Date and time with a blank between them, as the temperature file has it. */
  private static String clock(String text) {
    return text.replaceAll("(?<=[0-9])T(?=[0-9])", " ");
  }

  private static String degrees(Temperature t) {
    return String.format(Locale.ROOT, "%s F (%.1f C)", Numbers.plain(t.fahrenheit()), t.celsius());
  }
}
