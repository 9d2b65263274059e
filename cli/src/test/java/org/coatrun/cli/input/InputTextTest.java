package org.coatrun.cli.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import org.coatrun.shared.job.Job;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Text as shells and editors of each system save it. */
class InputTextTest {

  private static final String YAML = "project: {name: \"Kai 7, Süd\"}\n";

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"UTF-8, ''", "UTF-8, \uFEFF", "UTF-16LE, \uFEFF", "UTF-16BE, \uFEFF"})
  void aJobFileIsReadWithAMarkAndWithout(String charset, String mark) throws Exception {
    Path file = folder.resolve("job.yaml");
    Files.writeString(file, mark + YAML, Charset.forName(charset));

    Job job = Job.parse("job.yaml", InputText.read(file));

    assertThat(job.project().name()).isEqualTo("Kai 7, Süd");
  }
}
