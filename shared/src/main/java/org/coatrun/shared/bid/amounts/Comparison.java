package org.coatrun.shared.bid.amounts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.job.Alternate;
import org.coatrun.shared.rules.Numbers;

/** Lays an alternate beside the base bid. */
final class Comparison {

  private Comparison() {}

  static AlternateAmounts of(Alternate other, BidAmounts base, BidAmounts amounts) {
    Headline headline = Headline.of(amounts);
    return new AlternateAmounts(
        other,
        changes(other),
        headline,
        headline.minus(Headline.of(base)),
        amounts.money().lacks());
  }

  /** What the alternate changes, one clause each. */
  private static List<String> changes(Alternate other) {
    List<String> changes = new ArrayList<>();
    other.type().ifPresent(t -> changes.add("construction type " + t));
    if (!other.ratings().isEmpty()) {
      changes.add("more rating rules: " + other.ratings().size());
    }
    other.sprayDeck().ifPresent(s -> changes.add(s ? "deck sprayed" : "deck not sprayed"));
    other.restrained().ifPresent(r -> changes.add(r ? "restrained" : "unrestrained"));
    other.listing().ifPresent(l -> changes.add("listing " + l));
    Optional<String> density =
        other.density().map(d -> Numbers.plain(d.poundsPerCubicFoot()) + " pcf in place");
    density.ifPresent(changes::add);
    return changes;
  }
}
