package org.coatrun.cli.input;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.shared.bid.programme.TemperatureFile;
import org.coatrun.shared.job.Alternate;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.job.RatingRule;
import org.coatrun.shared.listing.DemonstrationListing;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.units.Temperature;
import org.coatrun.shared.yaml.JobFileException;

/**
 * A job file with the files beside it that it names.
 *
 * @param listings in the order of the job
 * @param temperatures by time, where the job names a record of them
 */
public record JobFolder(
    Job job,
    List<Listing> listings,
    Optional<NavigableMap<LocalDateTime, Temperature>> temperatures) {

  public JobFolder {
    listings = List.copyOf(listings);
  }

  /**
   * Reads a job file and what it names.
   *
   * @throws CommandFailure with one sentence about the first thing wrong
   */
  public static JobFolder read(Path file) throws CommandFailure {
    String text = InputText.read(file);
    Reader reader = new Reader(file, text);
    try {
      return reader.read();
    } catch (JobFileException e) {
      throw new CommandFailure(ExitCode.BAD_INPUT, e.getMessage());
    }
  }

  private static final class Reader {

    private final Path file;
    private final String text;

    Reader(Path file, String text) {
      this.file = file;
      this.text = text;
    }

    JobFolder read() throws CommandFailure {
      Job job = Job.parse(file.toString(), text);
      List<Listing> listings = new ArrayList<>();
      Set<String> names = new HashSet<>();
      for (String name : job.listings()) {
        Listing listing = listing(name);
        if (!names.add(listing.name())) {
          throw fault("listings", name, "a second listing is called '" + listing.name() + "'.");
        }
        listings.add(listing);
      }
      checkNames(job, names);
      Optional<NavigableMap<LocalDateTime, Temperature>> temperatures = Optional.empty();
      if (job.cold().temperatures().isPresent()) {
        temperatures = Optional.of(temperatures(job.cold().temperatures().get()));
      }
      return new JobFolder(job, listings, temperatures);
    }

    private Listing listing(String name) throws CommandFailure {
      Path beside = beside("listings", name);
      if (Files.notExists(beside) && name.equals(DemonstrationListing.FILE)) {
        return DemonstrationListing.read();
      }
      String yaml = existing(beside, "listings", name);
      return Listing.parse(beside.toString(), yaml, table -> tables(beside, table));
    }

    // The listing's own reader asks for it and cannot pass a checked failure on.
    private String tables(Path listing, String name) {
      try {
        return InputText.read(listing.resolveSibling(name));
      } catch (CommandFailure e) {
        throw new JobFileException(listing.toString(), 0, "tables-file", e.getMessage() + ".");
      }
    }

    private NavigableMap<LocalDateTime, Temperature> temperatures(String name)
        throws CommandFailure {
      Path beside = beside("cold.temperatures", name);
      return TemperatureFile.parse(beside.toString(), existing(beside, "cold.temperatures", name));
    }

    private String existing(Path beside, String key, String name) throws CommandFailure {
      if (Files.notExists(beside)) {
        throw fault(key, name, "no file '" + name + "' stands beside the job file.");
      }
      return InputText.read(beside);
    }

    private Path beside(String key, String name) {
      if (name.isBlank() || name.contains("/") || name.contains("\\") || name.startsWith(".")) {
        throw fault(key, name, "'" + name + "' is not a plain file name beside the job file.");
      }
      return file.resolveSibling(name);
    }

    /** Listings that rules, alternates and the choice of thickness name must be there. */
    private void checkNames(Job job, Set<String> known) {
      checkName("thickness.listing", job.thickness().listing(), known);
      rules("ratings", job.ratings(), known);
      for (Alternate other : job.alternates()) {
        checkName("alternates", other.listing(), known);
        rules("alternates", other.ratings(), known);
      }
    }

    private void rules(String key, List<RatingRule> rules, Set<String> known) {
      rules.forEach(rule -> checkName(key, rule.listing(), known));
    }

    private void checkName(String key, Optional<String> name, Set<String> known) {
      if (name.isPresent() && !known.contains(name.get())) {
        String there =
            known.isEmpty()
                ? "the job names none under listings"
                : "there is " + known.stream().sorted().collect(Collectors.joining(", "));
        throw fault(key, name.get(), "no listing is called '" + name.get() + "'; " + there + ".");
      }
    }

    private JobFileException fault(String key, String word, String sentence) {
      return new JobFileException(file.toString(), lineOf(key, word), key, sentence);
    }

    /** The first line under the key that holds a word; 0 where none does. */
    private int lineOf(String key, String word) {
      List<String> lines = text.lines().toList();
      String head = key.replaceFirst("\\..*", "") + ":";
      boolean under = false;
      for (int i = 0; i < lines.size(); i++) {
        under = under || lines.get(i).startsWith(head);
        if (under && lines.get(i).contains(word)) {
          return i + 1;
        }
      }
      return 0;
    }
  }
}
