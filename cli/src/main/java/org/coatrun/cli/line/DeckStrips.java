package org.coatrun.cli.line;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Extent;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/** A deck as strips about as wide as the arm and whip of one person reach. */
final class DeckStrips {

  private static final double WIDTH = 3;

  private DeckStrips() {}

  /** Strips along the longer side of the deck's box, its coating spread evenly over them. */
  static List<WorkPiece> of(String mark, String guid, Extent deck, Volume coating) {
    boolean alongX = deck.high().x() - deck.low().x() >= deck.high().y() - deck.low().y();
    double low = alongX ? deck.low().y() : deck.low().x();
    double high = alongX ? deck.high().y() : deck.high().x();
    int count = Math.max(1, (int) Math.ceil((high - low) / WIDTH));
    double z = 0.5 * (deck.low().z() + deck.high().z());
    var strips = new ArrayList<WorkPiece>();
    for (int i = 0; i < count; i++) {
      double at = low + (i + 0.5) / count * (high - low);
      strips.add(
          new WorkPiece(
              mark,
              guid,
              alongX ? new Vec3(deck.low().x(), at, z) : new Vec3(at, deck.low().y(), z),
              alongX ? new Vec3(deck.high().x(), at, z) : new Vec3(at, deck.high().y(), z),
              Length.ofMetres(deck.high().z() - deck.low().z()),
              coating.times(1.0 / count)));
    }
    return strips;
  }
}
