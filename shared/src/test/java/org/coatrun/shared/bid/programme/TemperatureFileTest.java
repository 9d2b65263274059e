package org.coatrun.shared.bid.programme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.coatrun.shared.bid.Rated;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.units.Temperature;
import org.coatrun.shared.yaml.JobFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemperatureFileTest {

  private static final List<RatedLine> ONE_DAY =
      List.of(Rated.line().area(100).floor("Level 1").member());

  @Test
  void readsTimesAndTemperaturesInEitherUnit() {
    NavigableMap<LocalDateTime, Temperature> record =
        TemperatureFile.parse(
            "t.csv",
            """
            # from the site
            place,time,temperature
            east,2026-01-05T07:00,38 F
            east,2026-01-05 08:30,-3.5 C
            """);
    assertThat(record).hasSize(2);
    assertThat(record.firstEntry().getValue().fahrenheit()).isCloseTo(38, within(1e-9));
    assertThat(record.get(LocalDateTime.of(2026, 1, 5, 8, 30)).celsius())
        .isCloseTo(-3.5, within(1e-9));
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "yesterday,40 F | 't.csv line 2, time: ''yesterday'' is not a time; write it as"
            + " 2026-01-05T07:00 or 2026-01-05 07:00.'",
        "2026-01-05T07:00,40 | 't.csv line 2, temperature: ''40'' is not a temperature; write a"
            + " number and one of F, C.'",
        "2026-01-05T07:00,40 K | 't.csv line 2, temperature: ''K'' is no unit of a temperature; use"
            + " one of F, C.'",
        "2026-01-05T07:00,900 F | 't.csv line 2, temperature: ''900 F'' is no temperature of any"
            + " place.'",
        "2026-01-05T07:00 | 't.csv line 2: this row has 1 cells, the header 2.'",
        "2026-02-30T07:00,40 F | 't.csv line 2, time: ''2026-02-30T07:00'' is not a time; write it"
            + " as 2026-01-05T07:00 or 2026-01-05 07:00.'"
      })
  void saysWhatIsWrongAndWhere(String row, String sentence) {
    assertThatThrownBy(() -> TemperatureFile.parse("t.csv", "time,temperature\n" + row + "\n"))
        .isInstanceOf(JobFileException.class)
        .hasMessage(sentence);
  }

  @Test
  void refusesTimesThatStandTwiceMissingColumnsAndEmptyFiles() {
    String row = "2026-01-05T07:00,40 F\n";
    assertThatThrownBy(() -> TemperatureFile.parse("t.csv", "time,temperature\n" + row + row))
        .hasMessage("t.csv line 3, time: two rows give a temperature for 2026-01-05T07:00.");
    assertThatThrownBy(() -> TemperatureFile.parse("t.csv", "when,temperature\n" + row))
        .hasMessageContaining("t.csv line 1, time: this column is missing");
    assertThatThrownBy(() -> TemperatureFile.parse("t.csv", "time,temperature\n"))
        .hasMessage("t.csv line 1: there is no row under the header.");
    assertThatThrownBy(() -> TemperatureFile.parse("t.csv", ""))
        .isInstanceOf(JobFileException.class);
  }

  /** Hourly, of one temperature but for one hour. */
  private static NavigableMap<LocalDateTime, Temperature> hours(
      LocalDateTime from, int count, double fahrenheit, int odd, double then) {
    NavigableMap<LocalDateTime, Temperature> record = new TreeMap<>();
    for (int i = 0; i < count; i++) {
      record.put(from.plusHours(i), Temperature.ofFahrenheit(i == odd ? then : fahrenheit));
    }
    return record;
  }

  private static List<Finding> judged(
      String programme, NavigableMap<LocalDateTime, Temperature> record) {
    return Plans.of("programme: {" + programme + "}", ONE_DAY, Optional.of(record)).findings();
  }

  /** 40 F or more from 24 h before to 24 h after (common practice): Monday 5 January, 7 in all. */
  @Test
  void aColdHourWithinADayBeforeWorkIsAFinding() {
    LocalDateTime sunday = LocalDateTime.of(2026, 1, 4, 0, 0);
    assertThat(judged("start: 2026-01-05", hours(sunday, 96, 45, -1, 0)))
        .extracting(f -> f.code().code())
        .doesNotContain("F418", "F419");
    // Sunday 6 in the morning is more than 24 h before, 7 is not.
    assertThat(judged("start: 2026-01-05", hours(sunday, 96, 45, 6, 20))).isEmpty();
    List<Finding> cold = judged("start: 2026-01-05", hours(sunday, 96, 45, 7, 20));
    assertThat(cold.get(0).code().code()).isEqualTo("F418");
    assertThat(cold.get(0).sentence())
        .startsWith(
            "2026-01-05 (day 1, Level 1): 20 F (-6.7 C) at 2026-01-04 07:00; least is 40 F (4.4 C)");
  }

  @Test
  void aRecordThatEndsTooSoonIsAFinding() {
    LocalDateTime sunday = LocalDateTime.of(2026, 1, 4, 0, 0);
    assertThat(judged("start: 2026-01-05", hours(sunday, 40, 45, -1, 0)))
        .extracting(f -> f.code().code())
        .containsOnly("F419");
  }

  @Test
  void temperaturesWithoutAStartCannotBeLaidBesideDays() {
    LocalDateTime sunday = LocalDateTime.of(2026, 1, 4, 0, 0);
    assertThat(judged("lead-time: 1 days", hours(sunday, 10, 45, -1, 0)))
        .extracting(Finding::sentence)
        .containsExactly(
            "Temperatures are given, and programme.start is not: no day can be judged.");
  }
}
