package org.coatrun.testmodels.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sample files that stand in the folder are what the generator writes. */
class SamplesTest {
  static java.util.List<Samples.Sample> all() {
    return Samples.all();
  }

  @ParameterizedTest
  @MethodSource("all")
  void aSampleIsWhatTheGeneratorWrites(Samples.Sample sample) throws IOException {
    Path file = Path.of(System.getProperty("coatrun.root"), "test-models", sample.file());
    assertThat(Models.bytes(sample.scenario(), sample.options()))
        .as("write it again with the command in test-models/README.md")
        .isEqualTo(Files.readAllBytes(file));
  }
}
