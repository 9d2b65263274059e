package org.coatrun.shared.bid.programme;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.WorkFinding;

/** What is amiss with deliveries, each kind in one sentence about its worst case. */
final class DeliveryFindings {

  private final DeliveryTerms terms;
  private final WorkCalendar calendar;

  DeliveryFindings(DeliveryTerms terms, WorkCalendar calendar) {
    this.terms = terms;
    this.calendar = calendar;
  }

  List<Finding> of(DeliveryPlanner.Plan plan) {
    List<Finding> findings = new ArrayList<>();
    plan.overfull().stream()
        .max(
            Comparator.comparingLong(DeliveryPlanner.Overfull::pallets)
                .thenComparing(DeliveryPlanner.Overfull::day, Comparator.reverseOrder()))
        .map(worst -> overfull(worst, plan.overfull().size()))
        .ifPresent(findings::add);
    List<Delivery> old =
        plan.deliveries().stream().filter(d -> d.keptDays() > terms.shelfLife()).toList();
    old.stream()
        .max(
            Comparator.comparingLong(Delivery::keptDays)
                .thenComparing(Delivery::day, Comparator.reverseOrder()))
        .map(worst -> old(worst, old.size()))
        .ifPresent(findings::add);
    return findings;
  }

  private Finding overfull(DeliveryPlanner.Overfull worst, int deliveries) {
    return Finding.of(
        WorkFinding.STORAGE_TOO_SMALL,
        "The storage room takes "
            + terms.room().orElse(0)
            + " pallets; the lead time and the trucks of a day ask for "
            + worst.pallets()
            + " in it on "
            + calendar.word(worst.day())
            + ", and it is too small at "
            + deliveries
            + " deliveries in all.");
  }

  private Finding old(Delivery worst, int deliveries) {
    return Finding.of(
        WorkFinding.SHELF_LIFE,
        "Bags that come on "
            + calendar.word(worst.day())
            + " are opened as late as "
            + calendar.word(worst.lastUse())
            + ", after "
            + worst.keptDays()
            + " days; they keep "
            + terms.shelfLife()
            + ". Deliveries of which this is so: "
            + deliveries
            + ".");
  }
}
