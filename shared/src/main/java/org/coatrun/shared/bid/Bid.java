package org.coatrun.shared.bid;

import java.util.List;
import java.util.Objects;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.model.ElementId;

/**
 * What is to be sprayed on each element of a takeoff, and why.
 *
 * @param job what decided
 * @param listings in the order of the job file
 * @param lines one for each element that counts and has a face to coat: members, then decks, each
 *     in the order of the takeoff; a column that passes floors has one for each floor that it is
 *     sprayed from, with its part of area and length
 * @param unusedRules labels of rating rules that match nothing
 * @param findings sorted, each once
 */
public record Bid(
    Job job,
    List<Listing> listings,
    List<RatedLine> lines,
    List<String> unusedRules,
    List<Finding> findings) {

  public Bid {
    Objects.requireNonNull(job);
    listings = List.copyOf(listings);
    lines = List.copyOf(lines);
    unusedRules = List.copyOf(unusedRules);
    findings = findings.stream().distinct().sorted().toList();
  }

  /** The lines of an element, from the lowest floor up. */
  public List<RatedLine> lines(ElementId id) {
    return lines.stream().filter(l -> l.item().id().equals(id)).toList();
  }

  /** Whether a thickness was taken from a listing that is invented. */
  public boolean usesDemonstration() {
    return lines.stream()
        .anyMatch(l -> l.thickness() instanceof Thickness.Given g && g.demonstration());
  }
}
