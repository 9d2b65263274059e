package org.coatrun.routing.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coatrun.routing.floor.FreeArea;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** A room with one or two straight walls in it, drawn at random: few enough ways to try all. */
public record SmallRoom(double width, double depth, List<Region> walls) {

  /** The room of this number. */
  public static SmallRoom of(long number) {
    var random = new Random(number);
    double w = 9 + 12 * random.nextDouble();
    double d = 8 + 8 * random.nextDouble();
    var walls = new ArrayList<Region>();
    for (int i = 0; i < 1 + number % 2; i++) {
      double x = 2 + (w - 5) * random.nextDouble();
      double y = 2 + (d - 5) * random.nextDouble();
      double length = 2 + 4 * random.nextDouble();
      walls.add(
          random.nextBoolean()
              ? Region.rectangle(x, y, Math.min(w - 1, x + length), y + 0.2)
              : Region.rectangle(x, y, x + 0.2, Math.min(d - 1, y + length)));
    }
    return new SmallRoom(w, d, walls);
  }

  /** Its slab. */
  public Region plate() {
    return Region.rectangle(0, 0, width, depth);
  }

  /** What of it is free, kept clear of by 0.15 m. */
  public FreeArea free() {
    return FreeArea.of(List.of(plate()), walls, Length.ofMetres(0.15));
  }

  /** A free point drawn at random. */
  public Vec2 point(Random random) {
    Vec2 p = new Vec2(width * random.nextDouble(), depth * random.nextDouble());
    return free().nearest(p, Length.ofMetres(20)).orElseThrow();
  }
}
