package org.coatrun.cli.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressTest {

  private final StringWriter text = new StringWriter();

  @Test
  void saysNothingOfWorkThatIsOverInAnInstant() {
    Progress progress = Progress.shownOn(new PrintWriter(text), () -> 0);
    progress.at("Reading", 0.5);
    progress.done();

    assertThat(text.toString()).isEmpty();
  }

  @Test
  void showsOneLineAndClearsIt() {
    long[] now = {0};
    Progress progress = Progress.shownOn(new PrintWriter(text), () -> now[0]);
    now[0] = 2_000_000_000L;
    progress.at("Reading", 0.5);
    progress.done();

    assertThat(text.toString()).startsWith("\rReading  50 %").endsWith(" \r").doesNotContain("\n");
  }

  @Test
  void doesNotRepeatItselfAtEachStep() {
    long[] now = {0};
    Progress progress = Progress.shownOn(new PrintWriter(text), () -> now[0]);
    now[0] = 2_000_000_000L;
    for (int i = 0; i < 1000; i++) {
      progress.at("Reading", i / 1000.0);
    }

    assertThat(text.toString()).containsOnlyOnce("Reading");
  }
}
