package org.coatrun.shared.job;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.rules.ConstructionType;
import org.coatrun.shared.units.Density;
import org.coatrun.shared.yaml.Key;

/**
 * Another way to do the job, priced beside the base bid: what it leaves out stays as in the job.
 */
public record Alternate(
    @Key(note = "what to call it") String name,
    @Key(note = "another construction type") Optional<ConstructionType> type,
    @Key(note = "more rating rules, after those of the job") List<RatingRule> ratings,
    @Key(note = "deck sprayed or not") Optional<Boolean> sprayDeck,
    @Key(note = "restrained ratings or not") Optional<Boolean> restrained,
    @Key(note = "another listing") Optional<String> listing,
    @Key(note = "another density in place", least = "5 pcf", most = "100 pcf")
        Optional<Density> density) {
  public Alternate {
    ratings = List.copyOf(ratings);
  }
}
