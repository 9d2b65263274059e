package org.coatrun.shared.estimate;

import java.util.Collection;
import org.coatrun.shared.surface.SurfaceLedger;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Mass;

/**
 * Sums over lines of the takeoff. Only lines that count have quantities; the others are counted by
 * number.
 *
 * @param weight of those lines that have one
 */
public record Totals(
    int counted,
    int leftOut,
    int unresolved,
    Length length,
    Mass weight,
    Area body,
    Area inside,
    Area ends,
    Area holes,
    Area covered,
    Area exposed) {

  /** The sum of no lines. */
  public static final Totals NONE =
      new Totals(
          0,
          0,
          0,
          Length.ZERO,
          Mass.ZERO,
          Area.ZERO,
          Area.ZERO,
          Area.ZERO,
          Area.ZERO,
          Area.ZERO,
          Area.ZERO);

  /** The sum of {@code lines}, in their order. */
  public static Totals of(Collection<? extends Line> lines) {
    Totals sum = NONE;
    for (Line line : lines) {
      sum = sum.plus(line.outcome());
    }
    return sum;
  }

  /** How many lines were summed. */
  public int all() {
    return counted + leftOut + unresolved;
  }

  private Totals plus(Outcome outcome) {
    return switch (outcome.status()) {
      case COUNTED -> plus(outcome.quantities().orElseThrow());
      case LEFT_OUT -> withCounts(counted, leftOut + 1, unresolved);
      case UNRESOLVED -> withCounts(counted, leftOut, unresolved + 1);
    };
  }

  private Totals plus(Quantities more) {
    SurfaceLedger ledger = more.ledger();
    return new Totals(
        counted + 1,
        leftOut,
        unresolved,
        length.plus(more.length()),
        weight.plus(more.weight().map(Weight::mass).orElse(Mass.ZERO)),
        body.plus(ledger.body()),
        inside.plus(ledger.inside()),
        ends.plus(ledger.ends()),
        holes.plus(ledger.holes()),
        covered.plus(ledger.covered()),
        exposed.plus(ledger.exposed()));
  }

  private Totals withCounts(int counted, int leftOut, int unresolved) {
    return new Totals(
        counted, leftOut, unresolved, length, weight, body, inside, ends, holes, covered, exposed);
  }
}
