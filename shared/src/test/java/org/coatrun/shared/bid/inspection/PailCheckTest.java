package org.coatrun.shared.bid.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.coatrun.shared.job.Job;
import org.coatrun.shared.job.MaterialSpec;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;

class PailCheckTest {

  private static final MaterialSpec MATERIAL = Job.defaults().material();

  /**
   * Hand: pi/4 x 11.25 x 11.25 x 10 in = 994.02 in3 of 231 to the gallon: 4.3031 gal in 60 s;
   * 4.3031 x 60 x 8.34 / (1.2 x 50 lb) = 35.888 bags/h (1.2 : 1 by weight is common practice).
   */
  @Test
  void aPailTellsFlowAndBags() {
    PailCheck check = PailCheck.of(Length.ofInches(10), Length.ofInches(11.25), 60, MATERIAL);
    assertThat(check.flow().gallonsPerMinute()).isCloseTo(4.3031, within(1e-4));
    assertThat(check.bagsPerHour()).isCloseTo(35.888, within(1e-3));
  }

  @Test
  void halfTheTimeIsTwiceTheFlow() {
    PailCheck minute = PailCheck.of(Length.ofInches(10), Length.ofInches(11), 60, MATERIAL);
    PailCheck half = PailCheck.of(Length.ofInches(10), Length.ofInches(11), 30, MATERIAL);
    assertThat(half.bagsPerHour()).isCloseTo(2 * minute.bagsPerHour(), within(1e-9));
  }

  @Test
  void anEmptyPailTellsNothing() {
    assertThatThrownBy(() -> PailCheck.of(Length.ZERO, Length.ofInches(11), 60, MATERIAL))
        .hasMessage("a pail check needs depth, diameter and seconds above 0");
  }
}
