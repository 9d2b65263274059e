package org.coatrun.routing.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coatrun.routing.floor.FreeArea;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** Floors drawn at random from a number: an L or a rectangle with walls at odd angles in it. */
record RandomFloor(List<Region> plate, List<Region> walls, FreeArea free) {

  static final Length MARGIN = Length.ofMetres(0.15);

  static RandomFloor of(long number) {
    var random = new Random(number);
    double w = 12 + 20 * random.nextDouble();
    double d = 10 + 15 * random.nextDouble();
    var plate = new ArrayList<>(List.of(Region.rectangle(0, 0, w, d)));
    if (random.nextBoolean()) {
      plate.add(Region.rectangle(w - 6, d - 1, w, d + 8));
    }
    var walls = new ArrayList<Region>();
    int count = 3 + random.nextInt(10);
    for (int i = 0; i < count; i++) {
      boolean straight = random.nextInt(3) == 0;
      walls.add(
          wall(
              new Vec2(w * random.nextDouble(), d * random.nextDouble()),
              0.2 + 5 * random.nextDouble(),
              0.2 + random.nextDouble(),
              straight ? 0 : Math.PI * random.nextDouble()));
    }
    return new RandomFloor(plate, walls, FreeArea.of(plate, walls, MARGIN));
  }

  RandomFloor with(Region another) {
    var more = new ArrayList<>(walls);
    more.add(another);
    return new RandomFloor(plate, more, FreeArea.of(plate, more, MARGIN));
  }

  /** Free points drawn at random; every third is a corner of the free area. */
  List<Vec2> points(Random random, int count) {
    var points = new ArrayList<Vec2>();
    List<Vec2> corners =
        free.regions().stream()
            .flatMap(r -> r.holes().isEmpty() ? r.outline().stream() : r.holes().get(0).stream())
            .toList();
    while (points.size() < count) {
      Vec2 p =
          points.size() % 3 == 2
              ? corners.get(random.nextInt(corners.size()))
              : new Vec2(32 * random.nextDouble(), 33 * random.nextDouble());
      free.nearest(p, Length.ofMetres(0.01)).ifPresent(points::add);
    }
    return points;
  }

  private static Region wall(Vec2 at, double length, double width, double angle) {
    Vec2 along = new Vec2(Math.cos(angle), Math.sin(angle)).times(length / 2);
    Vec2 across = along.unit().left().times(width / 2);
    return Region.of(
        at.minus(along).minus(across),
        at.plus(along).minus(across),
        at.plus(along).plus(across),
        at.minus(along).plus(across));
  }
}
