package org.coatrun.shared.bid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.job.RatingRule;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.model.ElementId;

/**
 * Puts bids of a takeoff together: hours, thickness and what is amiss with them. What the takeoff
 * says of its members is worked out once and serves each job.
 */
public final class BidAssembly {

  private final Takeoff takeoff;
  private final Coatables coatables;
  private final List<Coated> items;
  private final Map<ElementId, CoatedMember> members = new HashMap<>();

  /**
   * Bids on a takeoff.
   *
   * @param compactness whether to look which beams are compact, which decodes them once more: only
   *     the substitution of restrained beams asks for it
   */
  private BidAssembly(Takeoff takeoff, boolean compactness) {
    this.takeoff = takeoff;
    this.coatables = Coatables.with(takeoff, compactness);
    this.items = coatables.all();
    for (Coated item : items) {
      if (item instanceof CoatedMember m) {
        members.put(m.id(), m);
      }
    }
  }

  /** Bids on a takeoff by a job and by what its alternates change. */
  public static BidAssembly on(Takeoff takeoff, Job job, List<Listing> listings) {
    return new BidAssembly(takeoff, usesRestrained(job) && hasBeams(listings));
  }

  /**
   * The bid of a takeoff.
   *
   * @param listings those that the job names, in its order
   */
  public static Bid of(Takeoff takeoff, Job job, List<Listing> listings) {
    return on(takeoff, job, listings).bid(job, listings);
  }

  /** The bid by a job. */
  public Bid bid(Job job, List<Listing> listings) {
    Rulings rulings = new Rulings(job);
    ThicknessFinder thicknesses = new ThicknessFinder(job, listings);
    List<RatedLine> lines = new ArrayList<>();
    for (Coated item : items) {
      Ruling ruling = rulings.of(item);
      lines.add(new RatedLine(item, ruling, thicknesses.of(item, ruling, hosts(item))));
    }
    List<String> unused = rulings.unused(items);
    List<Finding> findings = findings(lines);
    findings.addAll(new JobFindings(job, listings).of(lines, unused));
    return new Bid(job, listings, byFloor(lines), unused, findings);
  }

  /** A column is decided upon as a whole, and sprayed floor by floor. */
  private List<RatedLine> byFloor(List<RatedLine> lines) {
    return lines.stream()
        .flatMap(
            line ->
                coatables.pieces(line.item()).stream()
                    .map(piece -> new RatedLine(piece, line.ruling(), line.thickness())))
        .toList();
  }

  private List<CoatedMember> hosts(Coated item) {
    return coatables.hosts(item.id()).stream()
        .map(members::get)
        .filter(Objects::nonNull)
        .filter(m -> m.byArea().isPresent())
        .toList();
  }

  private List<Finding> findings(List<RatedLine> lines) {
    LineFindings each = new LineFindings(takeoff.building());
    List<Finding> all = new ArrayList<>();
    lines.forEach(line -> all.addAll(each.of(line)));
    all.addAll(new SupportFindings(takeoff.building(), coatables.loads()).of(lines));
    return all;
  }

  private static boolean hasBeams(List<Listing> listings) {
    return listings.stream().anyMatch(l -> !l.beams().isEmpty());
  }

  private static boolean usesRestrained(Job job) {
    return job.thickness().restrained()
        || job.ratings().stream().map(RatingRule::restrained).anyMatch(r -> r.orElse(false))
        || job.alternates().stream().anyMatch(a -> a.restrained().orElse(false));
  }
}
