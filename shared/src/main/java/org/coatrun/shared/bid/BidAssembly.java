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
import org.coatrun.shared.units.Area;

/** Puts the bid of a takeoff together: hours, thickness and what is amiss with them. */
public final class BidAssembly {

  private final Takeoff takeoff;
  private final Job job;
  private final List<Listing> listings;
  private final Coatables coatables;
  private final Map<ElementId, CoatedMember> members = new HashMap<>();

  private BidAssembly(Takeoff takeoff, Job job, List<Listing> listings) {
    this.takeoff = takeoff;
    this.job = job;
    this.listings = listings;
    this.coatables = Coatables.with(takeoff, usesRestrained(job) && hasBeams(listings));
  }

  /**
   * The bid of a takeoff.
   *
   * @param listings those that the job names, in its order
   */
  public static Bid of(Takeoff takeoff, Job job, List<Listing> listings) {
    return new BidAssembly(takeoff, job, listings).bid();
  }

  private Bid bid() {
    List<Coated> items = coatables.all();
    for (Coated item : items) {
      if (item instanceof CoatedMember m) {
        members.put(m.id(), m);
      }
    }
    Rulings rulings = new Rulings(job);
    ThicknessFinder thicknesses = new ThicknessFinder(job, listings);
    List<RatedLine> lines = new ArrayList<>();
    for (Coated item : items) {
      Ruling ruling = rulings.of(item);
      lines.add(new RatedLine(item, ruling, thicknesses.of(item, ruling, hosts(item))));
    }
    List<String> unused = rulings.unused(items);
    return new Bid(job, listings, lines, unused, findings(lines, unused));
  }

  private List<CoatedMember> hosts(Coated item) {
    return coatables.hosts(item.id()).stream()
        .map(members::get)
        .filter(Objects::nonNull)
        .filter(m -> m.byArea().isPresent())
        .toList();
  }

  private List<Finding> findings(List<RatedLine> lines, List<String> unused) {
    List<Finding> all = new ArrayList<>();
    LineFindings each = new LineFindings(takeoff.building(), job);
    lines.forEach(line -> all.addAll(each.of(line)));
    all.addAll(new SupportFindings(takeoff.building(), coatables.loads()).of(lines));
    all.addAll(new JobFindings(job, listings).of(lines, unused));
    return all;
  }

  private static boolean hasBeams(List<Listing> listings) {
    return listings.stream().anyMatch(l -> !l.beams().isEmpty());
  }

  private static boolean usesRestrained(Job job) {
    return job.thickness().restrained()
        || job.ratings().stream()
            .map(RatingRule::restrained)
            .anyMatch(r -> r.orElse(false))
        || job.alternates().stream().anyMatch(a -> a.restrained().orElse(false));
  }

  /** The area to be sprayed of some lines: of those that have a thickness. */
  public static Area sprayed(List<RatedLine> lines) {
    Area sum = Area.ZERO;
    for (RatedLine line : lines) {
      if (line.thickness().spray().isPresent()) {
        sum = sum.plus(line.item().exposed());
      }
    }
    return sum;
  }
}
