package org.coatrun.geometry.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coatrun.geometry.solid.Box;
import org.coatrun.shared.line.FloorSpace;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Space;
import org.coatrun.shared.units.Volume;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.TopologyException;

/** The rooms of a building with their air. */
final class Rooms {

  private record Room(String name, Box box, double volume) {}

  /** A room's floor this near under or over a level belongs to it, in metres. */
  private static final double NEAR = 0.75;

  private final List<Room> rooms = new ArrayList<>();

  Rooms(Building building, Cuts cuts) {
    for (Space space : building.spaces()) {
      cuts.uncut(space).ifPresent(c -> add(space, c, cuts));
    }
  }

  private void add(Space space, Cut cut, Cuts cuts) {
    try {
      double volume = cut.closed() ? cut.boundary().volume() : 0;
      if (volume > 0) {
        String name = space.longName().isBlank() ? space.identity().name() : space.longName();
        rooms.add(new Room(name, cut.box(), volume));
      }
    } catch (IllegalArgumentException | ArithmeticException | TopologyException e) {
      cuts.say(space, "could not be measured");
    }
  }

  /** The rooms that stand on a floor, by name; rooms of the same name are kept apart. */
  List<FloorSpace> on(double z, Geometry plate) {
    Envelope about = plate.getEnvelopeInternal();
    return rooms.stream()
        .filter(r -> Math.abs(r.box.minZ() - z) <= NEAR)
        .filter(r -> about.contains(r.box.centreX(), r.box.centreY()))
        .map(r -> new FloorSpace(r.name, Volume.ofCubicMetres(r.volume)))
        .sorted(Comparator.comparing(FloorSpace::name).thenComparing(s -> s.volume().cubicMetres()))
        .toList();
  }
}
