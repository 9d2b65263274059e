package org.coatrun.shared.bid.amounts;

import java.math.BigDecimal;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Volume;

/**
 * The numbers that ways to do the job are compared by. Differences carry signs.
 *
 * @param inPlace material in place
 * @param total money, as far as prices are stated
 */
public record Headline(
    int elements,
    int withoutThickness,
    Area area,
    Volume inPlace,
    long bags,
    double personHours,
    int workingDays,
    BigDecimal total) {

  /** The headline of amounts. */
  static Headline of(BidAmounts amounts) {
    return new Headline(
        amounts.material().elements(),
        amounts.material().elementsWithoutThickness(),
        amounts.material().total().area(),
        amounts.material().total().inPlace(),
        amounts.order().bags(),
        amounts.labour().personHours(),
        amounts.programme().workingDays(),
        amounts.money().total());
  }

  /** This less the other. */
  public Headline minus(Headline other) {
    return new Headline(
        elements - other.elements,
        withoutThickness - other.withoutThickness,
        area.minus(other.area),
        inPlace.minus(other.inPlace),
        bags - other.bags,
        personHours - other.personHours,
        workingDays - other.workingDays,
        total.subtract(other.total));
  }
}
