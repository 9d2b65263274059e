package org.coatrun.cli.report;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.Totals;

/**
 * Sums of the ledger by what the bid says of its lines; lines that it says nothing of stand under
 * "", so that each sum of sums is the ledger's.
 */
final class BidSums {

  private final Results results;

  BidSums(Results results) {
    this.results = results;
  }

  /** By hours, as numbers in text, from the fewest. */
  <L extends Line> Map<String, Totals> byHours(Collection<L> lines) {
    return sums(
        lines,
        r -> r.ruling().hours().map(h -> Rounded.plain(h.hours()).toPlainString()).orElse(""));
  }

  /** By what decided the hours. */
  <L extends Line> Map<String, Totals> byRule(Collection<L> lines) {
    return sums(lines, r -> r.ruling().decidedBy());
  }

  private <L extends Line> Map<String, Totals> sums(
      Collection<L> lines, Function<RatedLine, String> key) {
    Map<String, Totals> sums = new TreeMap<>();
    Takeoff.groups(lines, line -> results.rated(line.identity().id()).map(key).orElse(""))
        .forEach((name, group) -> sums.put(name, Totals.of(group)));
    return sums;
  }
}
