package org.coatrun.shared.bid.material;

import java.util.Collection;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Volume;

/**
 * A sum of lines. Sums of sums equal the sum of all lines to the last digit, in any order (see
 * {@link Grid}); nothing is rounded before bags are made whole.
 *
 * @param pieces lines that were summed: a member that is sprayed from two floors is two
 * @param fluteFill what fills flutes; it is in the volumes as well
 * @param byOffset true volumes, and area by thickness where corners are not known
 * @param sprayed in place and lost
 */
public record MaterialSum(
    int pieces,
    Area area,
    Volume fluteFill,
    Volume byArea,
    Volume byOffset,
    Volume inPlace,
    Volume sprayed,
    Area bonding) {

  /** The sum of no lines. */
  public static final MaterialSum NONE =
      new MaterialSum(
          0, Area.ZERO, Volume.ZERO, Volume.ZERO, Volume.ZERO, Volume.ZERO, Volume.ZERO, Area.ZERO);

  /** The sum of {@code lines}. */
  public static MaterialSum of(Collection<MaterialLine> lines) {
    MaterialSum sum = NONE;
    for (MaterialLine line : lines) {
      sum = sum.plus(of(line));
    }
    return sum;
  }

  /** The sum of both. */
  public MaterialSum plus(MaterialSum more) {
    return new MaterialSum(
        pieces + more.pieces,
        area.plus(more.area),
        fluteFill.plus(more.fluteFill),
        byArea.plus(more.byArea),
        byOffset.plus(more.byOffset),
        inPlace.plus(more.inPlace),
        sprayed.plus(more.sprayed),
        bonding.plus(more.bonding));
  }

  private static MaterialSum of(MaterialLine line) {
    return new MaterialSum(
        1,
        line.area(),
        line.fluteFill(),
        line.byArea(),
        line.byOffset().orElse(line.byArea()),
        line.inPlace(),
        line.sprayed(),
        line.bonding());
  }
}
