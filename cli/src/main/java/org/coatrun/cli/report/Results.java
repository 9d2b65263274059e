package org.coatrun.cli.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.coatrun.cli.input.JobFolder;
import org.coatrun.shared.bid.Bid;
import org.coatrun.shared.bid.BidAssembly;
import org.coatrun.shared.bid.CoatedSummaries;
import org.coatrun.shared.bid.CoatedSummary;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.bid.material.WorkFloors;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.model.ElementId;

/** All that a run worked out: the takeoff and, where there is a job, the bid and its amounts. */
public final class Results {

  private final Takeoff takeoff;
  private final Optional<Bid> bid;
  private final Optional<BidAmounts> amounts;
  private final Map<ElementId, CoatedSummary> coated;
  private final Map<ElementId, RatedLine> rated = new HashMap<>();
  private final List<String> moreBasis = new ArrayList<>();

  private Results(
      Takeoff takeoff,
      Optional<Bid> bid,
      Optional<BidAmounts> amounts,
      Map<ElementId, CoatedSummary> coated) {
    List<Finding> findings = new ArrayList<>();
    bid.ifPresent(b -> findings.addAll(b.findings()));
    amounts.ifPresent(a -> findings.addAll(a.findings()));
    this.takeoff = takeoff.with(findings);
    this.bid = bid;
    this.amounts = amounts;
    this.coated = coated;
    bid.ifPresent(b -> b.lines().forEach(line -> rated.putIfAbsent(line.item().id(), line)));
  }

  /** Surfaces and places alone: without a job nothing says how long anything has to hold. */
  public static Results of(Takeoff takeoff) {
    return new Results(takeoff, Optional.empty(), Optional.empty(), CoatedSummaries.of(takeoff));
  }

  /** Hours, thickness and amounts by a job. */
  public static Results of(Takeoff takeoff, JobFolder folder) {
    BidAssembly assembly = BidAssembly.on(takeoff, folder.job(), folder.listings());
    Bid bid = assembly.bid(folder.job(), folder.listings());
    BidAmounts amounts =
        BidAmounts.of(
            bid.lines(),
            other -> assembly.bid(other, folder.listings()).lines(),
            folder.job(),
            WorkFloors.of(takeoff.building().storeys(), bid.lines()),
            folder.temperatures());
    return new Results(takeoff, Optional.of(bid), Optional.of(amounts), CoatedSummaries.of(bid));
  }

  /** The same with the findings and the basis of what was worked out besides. */
  public Results with(List<Finding> more, List<String> basis) {
    Results other = new Results(takeoff.with(more), bid, amounts, coated);
    other.moreBasis.addAll(moreBasis);
    other.moreBasis.addAll(basis);
    return other;
  }

  /** The takeoff; its findings are all findings of the run. */
  public Takeoff takeoff() {
    return takeoff;
  }

  /** Hours and thickness, where there is a job. */
  public Optional<Bid> bid() {
    return bid;
  }

  /** Material, labour, money, programme and inspection, where there is a job. */
  public Optional<BidAmounts> amounts() {
    return amounts;
  }

  /** What lists say of an element that may be coated; empty where it has no face to coat. */
  public Optional<CoatedSummary> coated(ElementId id) {
    return Optional.ofNullable(coated.get(id));
  }

  /** The hours and thickness of an element, those of its lowest piece; empty without a job. */
  public Optional<RatedLine> rated(ElementId id) {
    return Optional.ofNullable(rated.get(id));
  }

  /** What every output says about its limits, and that a listing is invented where one is. */
  public List<String> cautions() {
    List<String> all = new ArrayList<>(Cautions.ALL);
    if (bid.map(Bid::usesDemonstration).orElse(false)) {
      all.add(0, Listing.DEMONSTRATION);
    }
    return List.copyOf(all);
  }

  /** What the numbers mean and what decided them, each once. */
  public List<String> basis() {
    Set<String> all = new LinkedHashSet<>(Basis.LINES);
    all.addAll(BidBasis.of(this));
    all.addAll(moreBasis);
    return List.copyOf(all);
  }
}
