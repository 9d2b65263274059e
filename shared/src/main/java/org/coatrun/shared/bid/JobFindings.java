package org.coatrun.shared.bid;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.units.Density;

/** What is amiss with a job as a whole. */
final class JobFindings {

  private static final double SAME_KG_PER_M3 = 1e-6;

  private final Job job;
  private final List<Listing> listings;

  JobFindings(Job job, List<Listing> listings) {
    this.job = job;
    this.listings = listings;
  }

  List<Finding> of(List<RatedLine> lines, List<String> unused) {
    List<Finding> findings = new ArrayList<>();
    typeNotStated(lines, findings);
    noListing(lines, findings);
    for (Listing listing : listings) {
      if (isUsed(listing, lines)) {
        density(listing, findings);
        demonstration(listing, findings);
      }
    }
    unused.forEach(
        label ->
            findings.add(
                Finding.of(
                    WorkFinding.RULE_UNUSED, "The rating rule '" + label + "' matches nothing.")));
    return findings;
  }

  private void typeNotStated(List<RatedLine> lines, List<Finding> findings) {
    long byTable =
        lines.stream()
            .filter(l -> l.ruling().coat() && l.ruling().decidedBy().startsWith("IBC Table 601"))
            .count();
    if (job.building().type().isEmpty() && byTable > 0) {
      findings.add(
          Finding.of(
              WorkFinding.TYPE_NOT_STATED,
              "The job file states no construction type; "
                  + byTable
                  + " members and decks are rated as type I-A."));
    }
  }

  private void noListing(List<RatedLine> lines, List<Finding> findings) {
    long without =
        lines.stream()
            .filter(l -> l.thickness().reason().endsWith(ThicknessFinder.NO_LISTING))
            .count();
    if (without > 0) {
      findings.add(
          Finding.of(
              WorkFinding.NO_LISTING_ENTRY,
              "The job file names no listing; "
                  + without
                  + " members and decks have hours and no thickness."));
    }
  }

  private static boolean isUsed(Listing listing, List<RatedLine> lines) {
    return lines.stream()
        .anyMatch(
            l -> l.thickness() instanceof Thickness.Given g && g.listing().equals(listing.name()));
  }

  private void density(Listing listing, List<Finding> findings) {
    Density used = job.material().density();
    listing
        .density()
        .filter(
            least ->
                used.kilogramsPerCubicMetre() < least.kilogramsPerCubicMetre() - SAME_KG_PER_M3)
        .ifPresent(
            least ->
                findings.add(
                    Finding.of(
                        WorkFinding.LISTING_DENSITY,
                        String.format(
                            Locale.ROOT,
                            "The job's %.1f pcf is under %.1f pcf, the least that %s was tested at.",
                            used.poundsPerCubicFoot(),
                            least.poundsPerCubicFoot(),
                            listing.name()))));
  }

  private static void demonstration(Listing listing, List<Finding> findings) {
    if (listing.demonstration()) {
      findings.add(
          Finding.of(
              WorkFinding.DEMONSTRATION,
              "Listing " + listing.name() + ": " + Listing.DEMONSTRATION));
    }
  }
}
