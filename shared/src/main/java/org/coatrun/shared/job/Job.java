package org.coatrun.shared.job;

import java.util.List;
import org.coatrun.shared.yaml.Key;
import org.coatrun.shared.yaml.RecordReader;

/**
 * A job: everything that the program decides by, with a stated default for each. Coordinates are
 * those of the model, before its origin is taken off.
 */
public record Job(
    @Key(note = "by what the job is known") ProjectInfo project,
    @Key(note = "units of the reports: us or si", fallback = "us") UnitSystem units,
    @Key(note = "construction type, occupancy, height") Construction building,
    @Key(note = "rules that win over Table 601, in order; the last that matches wins")
        List<RatingRule> ratings,
    @Key(note = "what is steel and what is not, where the model does not say")
        List<SubstanceRule> substances,
    @Key(note = "contact, holes, attachments") Exposure exposure,
    @Key(note = "deck sprayed or not, and its profile") DeckWork deck,
    @Key(note = "listing files beside this one") List<String> listings,
    @Key(note = "how thickness is taken from a listing") ThicknessChoice thickness,
    @Key(note = "bags, density, waste, pallets, trucks") MaterialSpec material,
    @Key(note = "the machine") MachineSpec machine,
    @Key(note = "crew, rates, height bands") Labour labour,
    @Key(note = "prices in one currency") Prices prices,
    @Key(note = "other ways to do the job, side by side") List<Alternate> alternates,
    @Key(note = "days, deliveries, checks") Programme programme,
    @Key(note = "the cold-weather rule") Cold cold,
    @Key(note = "how members are drawn") Inspection inspection,
    @Key(note = "limits of the material line") LineSpec line,
    @Key(note = "water supply") WaterSupply water,
    @Key(note = "power supply") PowerSupply power,
    @Key(note = "ventilation") AirSupply air,
    @Key(note = "machine spots, risers, keep-outs, access") Site site) {

  /**
   * @throws IllegalArgumentException where two alternates or listings share a name
   */
  public Job {
    ratings = List.copyOf(ratings);
    substances = List.copyOf(substances);
    listings = List.copyOf(listings);
    alternates = List.copyOf(alternates);
    if (alternates.stream().map(Alternate::name).distinct().count() < alternates.size()) {
      throw new IllegalArgumentException("two alternates share a name");
    }
    if (listings.stream().distinct().count() < listings.size()) {
      throw new IllegalArgumentException("a listing file is named twice");
    }
  }

  /** A job that states nothing: every default. */
  public static Job defaults() {
    return Defaults.JOB;
  }

  /** Read once, when it is first asked for. */
  private static final class Defaults {
    private static final Job JOB = parse("defaults", "");
  }

  /**
   * Reads a job file.
   *
   * @param file name to use in messages
   * @throws org.coatrun.shared.yaml.JobFileException with one sentence about the first thing wrong
   */
  public static Job parse(String file, String text) {
    return RecordReader.read(file, text, Job.class);
  }
}
