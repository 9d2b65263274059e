package org.coatrun.shared.bid;

import static org.assertj.core.api.Assertions.assertThat;

import org.coatrun.shared.units.FireDuration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RatingTextTest {

  // EN 13501-2 writes R 30 to REI 240 in minutes; the US trade writes hours.
  @ParameterizedTest
  @CsvSource({
    "2, 120", "2 h, 120", "2HR, 120", "2-hour, 120", "1 1/2 hours, 90", "1-1/2 HR, 90", "1.5 h, 90",
    "'1,5 h', 90", "3/4 h, 45", "0, 0", "120, 120", "90 min, 90", "R120, 120", "REI 90, 90",
    "EI30, 30", "F90, 90", "R 60, 60"
  })
  void readsHoursAndMinutes(String text, double minutes) {
    assertThat(RatingText.read(text)).contains(FireDuration.ofMinutes(minutes));
  }

  @ParameterizedTest
  @ValueSource(strings = {"two hours", "see schedule", "A-60", "R", "1/0 of it", "1000000", "-2"})
  void leavesTheRestUnread(String text) {
    assertThat(RatingText.read(text)).isEmpty();
    assertThat(RatingText.saysNothing(text)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "-", "N/A", "none", "Unrated", "NOTDEFINED"})
  void knowsWhatSaysNothing(String text) {
    assertThat(RatingText.saysNothing(text)).isTrue();
  }
}
