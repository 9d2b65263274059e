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

  /** The sum of {@code lines}, in their order. */
  public static Totals of(Collection<? extends Line> lines) {
    Sum sum = new Sum();
    for (Line line : lines) {
      sum.add(line.outcome());
    }
    return sum.totals();
  }

  /** How many lines were summed. */
  public int all() {
    return counted + leftOut + unresolved;
  }

  /** The sum of the lines so far; in plain numbers, since large buildings are summed often. */
  private static final class Sum {
    private int counted;
    private int leftOut;
    private int unresolved;
    private double metres;
    private double kilograms;
    private double body;
    private double inside;
    private double ends;
    private double holes;
    private double covered;
    private double exposed;

    void add(Outcome outcome) {
      if (outcome instanceof Outcome.Counted c) {
        counted++;
        add(c.measured());
      } else if (outcome instanceof Outcome.LeftOut) {
        leftOut++;
      } else {
        unresolved++;
      }
    }

    private void add(Quantities more) {
      metres += more.length().metres();
      kilograms += more.weight().isPresent() ? more.weight().get().mass().kilograms() : 0;
      SurfaceLedger ledger = more.ledger();
      body += ledger.body().squareMetres();
      inside += ledger.inside().squareMetres();
      ends += ledger.ends().squareMetres();
      holes += ledger.holes().squareMetres();
      covered += ledger.covered().squareMetres();
      exposed += ledger.exposed().squareMetres();
    }

    Totals totals() {
      return new Totals(
          counted,
          leftOut,
          unresolved,
          Length.ofMetres(metres),
          Mass.ofKilograms(kilograms),
          Area.ofSquareMetres(body),
          Area.ofSquareMetres(inside),
          Area.ofSquareMetres(ends),
          Area.ofSquareMetres(holes),
          Area.ofSquareMetres(covered),
          Area.ofSquareMetres(exposed));
    }
  }
}
