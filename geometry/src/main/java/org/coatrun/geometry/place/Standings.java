package org.coatrun.geometry.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.solid.Box;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.surface.Standing;
import org.coatrun.shared.units.Length;

/** Finds where bodies stand among the floors and rooms of a building. */
public final class Standings {

  /** A floor further down than this is looked for beside the middle as well. */
  private static final double FAR_DOWN_M = 6;

  /** What lies may be let into its floor by this much. */
  private static final double LET_IN_M = 0.05;

  /** The foot of what stands may be this deep under the floor, as columns on footings are. */
  private static final double FOOT_M = 0.75;

  /** Less than this of a column above or below a floor is sprayed with the rest. */
  private static final double PIECE_M = 0.5;

  private static final double UPRIGHT = 0.9;
  private static final double LYING = 0.5;

  private final Plumb plates;
  private final Plumb rooms;

  /**
   * @param plates slabs and decks that one can stand on
   * @param rooms bodies of rooms
   */
  public Standings(List<Thing> plates, List<Thing> rooms) {
    this.plates = new Plumb(plates);
    this.rooms = new Plumb(rooms);
  }

  /**
   * Where each body stands, those over each other in turn. Its floor is the highest one under its
   * foot at its middle; where none lies within 6 m, also within a metre of it. The foot of what
   * stands may be up to 0.75 m, and a third of its height, under the floor.
   */
  public List<Standing> of(List<Thing> bodies) {
    Map<Vec2, List<Thing>> stacks = new LinkedHashMap<>();
    for (Thing body : bodies) {
      Box b = body.bounds();
      Vec2 middle = new Vec2(b.centreX(), b.centreY());
      stacks.computeIfAbsent(middle, k -> new ArrayList<>()).add(body);
    }
    List<Standing> all = new ArrayList<>(bodies.size());
    stacks.forEach(
        (middle, stack) -> {
          Spot spot = new Spot(middle, plates, rooms);
          stack.forEach(body -> all.add(standing(body, spot)));
        });
    return all;
  }

  private static Standing standing(Thing body, Spot spot) {
    Box b = body.bounds();
    Optional<Plumb.Hit> floor = floor(spot, foot(body), body.id());
    Optional<Plumb.Hit> over = spot.line().over(b.centreZ(), body.id());
    double lowest = floor.map(Plumb.Hit::z).orElse(Double.NEGATIVE_INFINITY);
    return new Standing(
        body.id(),
        spot.middle(),
        Length.ofMetres(b.minZ()),
        Length.ofMetres(b.maxZ()),
        floor.map(Standings::level),
        over.map(Standings::level),
        spot.rooms().at(b.centreZ(), lowest - FOOT_M),
        isUpright(body) ? passed(body, lowest, spot) : List.of());
  }

  /** Tops of plates within the height of a body, each floor once, by its uppermost face. */
  private static List<Standing.Level> passed(Thing body, double above, Spot spot) {
    Box b = body.bounds();
    double from = Math.max(above, foot(body)) + PIECE_M;
    double to = b.maxZ() - PIECE_M;
    List<Plumb.Hit> hits = spot.line().between(from, to);
    spot.beside().forEach(line -> hits.addAll(line.between(from, to)));
    List<Plumb.Hit> tops =
        hits.stream()
            .filter(h -> h.up() && h.z() > from && h.z() < to)
            .sorted(Comparator.comparingDouble(Plumb.Hit::z).thenComparing(Plumb.Hit::id))
            .toList();
    List<Standing.Level> floors = new ArrayList<>();
    for (int i = 0; i < tops.size(); i++) {
      if (i + 1 == tops.size() || tops.get(i + 1).z() > tops.get(i).z() + PIECE_M) {
        floors.add(level(tops.get(i)));
      }
    }
    return floors;
  }

  private static boolean isUpright(Thing body) {
    Box b = body.bounds();
    return b.maxZ() - b.minZ() > 2 * PIECE_M
        && body.form().axis().map(a -> Math.abs(a.direction().z()) > UPRIGHT).orElse(false);
  }

  private static double foot(Thing body) {
    Box b = body.bounds();
    boolean lies = body.form().axis().map(a -> Math.abs(a.direction().z()) < LYING).orElse(false);
    return b.minZ() + (lies ? LET_IN_M : Math.min(FOOT_M, (b.maxZ() - b.minZ()) / 3));
  }

  private static Optional<Plumb.Hit> floor(Spot spot, double z, ElementId but) {
    Optional<Plumb.Hit> best = spot.line().under(z, but);
    if (best.isPresent() && best.get().z() > z - FAR_DOWN_M) {
      return best;
    }
    for (PlumbLine line : spot.beside()) {
      Optional<Plumb.Hit> beside = line.under(z, but);
      if (beside.isPresent() && (best.isEmpty() || beside.get().z() > best.get().z())) {
        best = beside;
      }
    }
    return best;
  }

  private static Standing.Level level(Plumb.Hit hit) {
    return new Standing.Level(hit.id(), Length.ofMetres(hit.z()));
  }
}
