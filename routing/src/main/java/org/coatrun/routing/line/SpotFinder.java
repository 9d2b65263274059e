package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.coatrun.routing.floor.FreeArea;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/**
 * Looks for machine spots on the machine's floor, and where several positions are allowed, on each
 * floor that a machine below cannot lift to: room for machine and bags, near trucks, power and
 * water as far as these are known.
 */
final class SpotFinder {

  /** More spots than these add nothing that the line would notice. */
  private static final int MOST = 40;

  /** Higher up, where floors are alike and the line is short, fewer will do. */
  private static final int MOST_ABOVE = 8;

  private final LineRequest request;

  SpotFinder(LineRequest request) {
    this.request = request;
  }

  /**
   * At most forty spots on the machine's floor and eight on each one above, the cheapest to serve
   * of a floor first, then from south to north and west to east.
   */
  List<MachineSpot> find() {
    var spots = new ArrayList<MachineSpot>();
    int base = request.machineFloor();
    add(base, places(base), MOST, spots);
    int count = request.mostMachines() > 1 ? request.floors().size() : 0;
    for (int f = base + 1; f < count; f++) {
      if (!lifts(base, f)) {
        base = addHighest(base, f, spots);
      }
    }
    return spots;
  }

  private boolean lifts(int from, int to) {
    Length low = request.floors().get(from).elevation();
    return request.limits().machineLifts(request.floors().get(to).elevation().minus(low));
  }

  /** Spots on the highest floor that has room, of those over one up to another; that floor. */
  private int addHighest(int over, int upTo, List<MachineSpot> spots) {
    for (int f = upTo; f > over; f--) {
      List<Vec2> places = places(f);
      if (!places.isEmpty()) {
        add(f, places, MOST_ABOVE, spots);
        return f;
      }
    }
    return upTo;
  }

  private void add(int floor, List<Vec2> places, int most, List<MachineSpot> spots) {
    for (Vec2 at : places.subList(0, Math.min(most, places.size()))) {
      spots.add(
          new MachineSpot(
              "M" + (spots.size() + 1), floor, at, service(floor, at), needs(floor, at)));
    }
  }

  /** Where the rectangle fits one way or the other. */
  private List<Vec2> places(int floor) {
    var room = new MachineRoom(request, floor);
    FreeArea all = room.all();
    double half = request.site().roomWidth().metres() / 2;
    List<Vec2> places = places(room.narrow(), half, p -> room.fits(p, all));
    places.sort(
        Comparator.comparingDouble((Vec2 p) -> service(floor, p))
            .thenComparingDouble(Vec2::y)
            .thenComparingDouble(Vec2::x));
    return places;
  }

  /** At most forty, as close together as that allows. */
  private static List<Vec2> places(FreeArea room, double least, Predicate<Vec2> fits) {
    for (double step = Math.max(least, 1); ; step *= 1.25) {
      List<Vec2> places = lattice(room, step, fits);
      if (places.size() <= MOST) {
        return places;
      }
    }
  }

  /** Free lattice points and the corners of the room's area, which lie nearest to its walls. */
  private static List<Vec2> lattice(FreeArea room, double step, Predicate<Vec2> fits) {
    var places = new ArrayList<Vec2>();
    for (Region r : room.regions()) {
      for (Vec2 corner : r.outline()) {
        if (fits.test(corner)) {
          addApart(places, corner, step);
        }
      }
      double x0 = r.outline().stream().mapToDouble(Vec2::x).min().orElse(0);
      double x1 = r.outline().stream().mapToDouble(Vec2::x).max().orElse(0);
      double y0 = r.outline().stream().mapToDouble(Vec2::y).min().orElse(0);
      double y1 = r.outline().stream().mapToDouble(Vec2::y).max().orElse(0);
      for (double y = y0; y <= y1; y += step) {
        for (double x = x0; x <= x1; x += step) {
          Optional<Vec2> at = room.nearest(new Vec2(x, y), Length.ofMillimetres(1));
          at.filter(fits).ifPresent(p -> addApart(places, p, step));
        }
      }
    }
    return places;
  }

  private static void addApart(List<Vec2> places, Vec2 p, double step) {
    if (places.stream().allMatch(q -> q.distance(p) > 0.9 * step)) {
      places.add(p);
    }
  }

  /** What a machine at this place is away from, as far as known, and whether it stands dry. */
  List<String> needs(int floor, Vec2 at) {
    var needs = new ArrayList<String>();
    request.site().power().ifPresent(p -> needs.add(need("power", at, p)));
    request.site().water().ifPresent(p -> needs.add(need("water", at, p)));
    nearestTruck(at).ifPresent(p -> needs.add(need("trucks", at, p)));
    if (floor > request.machineFloor()) {
      needs.add("a hoist that brings the bags up to " + request.floors().get(floor).storey());
    }
    if (request.floors().get(floor).onAssumedGround(at)) {
      needs.add(GroundBeside.NEED);
    }
    if (!underCover(floor, at)) {
      needs.add("no slab over it: a cover against the weather for machine and bags");
    }
    return needs;
  }

  private String need(String what, Vec2 at, Vec2 from) {
    return what + " " + request.wording().about(Length.ofMetres(at.distance(from))) + " away";
  }

  private boolean underCover(int floor, Vec2 at) {
    if (request.floors().get(floor).cover().stream().anyMatch(r -> r.contains(at))) {
      return true;
    }
    return request.floors().stream()
        .skip(floor + 1L)
        .anyMatch(f -> f.plate().stream().anyMatch(p -> p.contains(at)));
  }

  /** What haul and feeders cost at this place, over the ground and up to its floor. */
  double service(int floor, Vec2 at) {
    double up =
        Math.max(
            0,
            request.floors().get(floor).elevation().metres()
                - request.floors().get(request.machineFloor()).elevation().metres());
    double haul = request.costs().haulPerMetre() * (up + away(nearestTruck(at), at));
    double feeders = 2 * up + away(request.site().power(), at) + away(request.site().water(), at);
    return haul + request.costs().feederPerMetre() * feeders;
  }

  private static double away(Optional<Vec2> place, Vec2 at) {
    return place.map(at::distance).orElse(0.0);
  }

  private Optional<Vec2> nearestTruck(Vec2 at) {
    return request.site().truckAccess().stream().min(Comparator.comparingDouble(at::distance));
  }
}
