package org.coatrun.geometry.place;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Vec2;

/**
 * A place in plan: what its plumb line and those within reach of it meet. Bodies that stand over
 * each other share one. Not for several threads.
 */
final class Spot {

  /** So far from the middle: what a man beside a shaft reaches. */
  private static final double BESIDE_M = 1;

  private static final double[][] AROUND = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};

  private final Vec2 middle;
  private final Plumb plates;
  private final PlumbLine line;
  private final RoomLine rooms;
  private List<PlumbLine> beside = List.of();

  Spot(Vec2 middle, Plumb plates, Plumb rooms) {
    this.middle = middle;
    this.plates = plates;
    this.line = new PlumbLine(plates, middle.x(), middle.y());
    this.rooms = new RoomLine(new PlumbLine(rooms, middle.x(), middle.y()));
  }

  Vec2 middle() {
    return middle;
  }

  /** The plates over and under the middle. */
  PlumbLine line() {
    return line;
  }

  /** The plates over and under the four points a metre from the middle. */
  List<PlumbLine> beside() {
    if (beside.isEmpty()) {
      beside = new ArrayList<>();
      for (double[] to : AROUND) {
        double x = middle.x() + BESIDE_M * to[0];
        double y = middle.y() + BESIDE_M * to[1];
        beside.add(new PlumbLine(plates, x, y));
      }
    }
    return beside;
  }

  /** The rooms over and under the middle. */
  RoomLine rooms() {
    return rooms;
  }
}
