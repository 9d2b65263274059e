package org.coatrun.shared.listing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.coatrun.shared.yaml.JobFileException;

/** The invented listing that the program ships so that its samples can be worked through. */
public final class DemonstrationListing {

  /** File name by which a job asks for it where no such file stands beside the job. */
  public static final String FILE = "demonstration.yaml";

  private DemonstrationListing() {}

  /** Its text, comments included. */
  public static String text() {
    try (InputStream in = DemonstrationListing.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("the demonstration listing is not in the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The listing itself. */
  public static Listing read() {
    return Listing.parse(
        FILE,
        text(),
        f -> {
          throw new JobFileException(FILE, 0, "tables-file", "no file stands beside it.");
        });
  }
}
