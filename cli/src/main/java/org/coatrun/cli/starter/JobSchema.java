package org.coatrun.cli.starter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.coatrun.shared.job.Job;

/** The JSON Schema of job files. */
public final class JobSchema {

  private JobSchema() {}

  /** The schema as text. */
  public static String text() {
    try (InputStream in = Job.class.getResourceAsStream("job.schema.json")) {
      if (in == null) {
        throw new IllegalStateException("the program's archive lacks job.schema.json");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
