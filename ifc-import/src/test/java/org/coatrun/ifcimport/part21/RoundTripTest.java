package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Random values, written in random styles, are read as what they were. */
class RoundTripTest {

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void readsWhatWasWritten(long seed) {
    RandomStep random = new RandomStep(new Random(seed));
    List<StepRecord> records = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 2000; i++) {
      StepRecord record = random.record(7L * i + 1);
      records.add(record);
      text.append(random.write(record));
    }
    StepFile file = StepText.open(folder, text.toString());
    assertThat(file.count()).isEqualTo(records.size());
    for (StepRecord record : records) {
      assertThat(file.record(record.id())).isEqualTo(record);
      assertThat(file.nameOf(record.id())).isEqualTo(record.name());
    }
    assertThat(file.findings()).isEmpty();
  }
}
