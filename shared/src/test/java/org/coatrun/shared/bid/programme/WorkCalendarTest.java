package org.coatrun.shared.bid.programme;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.coatrun.shared.job.Job;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkCalendarTest {

  private static WorkCalendar calendar(String programme) {
    return WorkCalendar.of(Job.parse("job.yaml", "programme: {" + programme + "}").programme());
  }

  /** 2026-03-07 is a Saturday. */
  @ParameterizedTest(name = "day {0}: {1}")
  @CsvSource({
    "1, 2026-03-09",
    "5, 2026-03-13",
    "6, 2026-03-16",
    "0, 2026-03-06",
    "-4, 2026-03-02",
    "11, 2026-03-23"
  })
  void daysAreWorkingDays(int day, LocalDate date) {
    assertThat(calendar("start: 2026-03-07").date(day)).contains(date);
  }

  @Test
  void aWeekMayHaveAnyDays() {
    WorkCalendar calendar = calendar("start: 2026-03-03, days: [saturday, tuesday]");
    assertThat(calendar.date(1)).contains(LocalDate.of(2026, 3, 3));
    assertThat(calendar.date(2)).contains(LocalDate.of(2026, 3, 7));
    assertThat(calendar.date(3)).contains(LocalDate.of(2026, 3, 10));
    assertThat(calendar.calendarDays(1, 3)).isEqualTo(7);
    assertThat(calendar.word(2)).isEqualTo("day 2 (2026-03-07)");
  }

  @Test
  void withoutAStartDaysHaveNumbersOnlyAndWeeksAllTheSame() {
    WorkCalendar calendar = calendar("lead-time: 1 days");
    assertThat(calendar.date(3)).isEmpty();
    assertThat(calendar.word(3)).isEqualTo("day 3");
    assertThat(calendar.calendarDays(1, 6)).isEqualTo(7);
    assertThat(calendar.calendarDays(0, 1)).isEqualTo(3);
  }
}
