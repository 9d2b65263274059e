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
 * Looks for machine spots on the machine's floor: room for machine and bags, near trucks, power and
 * water as far as these are known.
 */
final class SpotFinder {

  /** More spots than these add nothing that the line would notice. */
  private static final int MOST = 40;

  private final LineRequest request;

  SpotFinder(LineRequest request) {
    this.request = request;
  }

  /**
   * At most forty spots, the cheapest to serve first, then from south to north and west to east.
   */
  List<MachineSpot> find() {
    List<Vec2> places = places();
    var spots = new ArrayList<MachineSpot>();
    for (Vec2 at : places) {
      spots.add(spot("M" + (spots.size() + 1), at));
    }
    return spots;
  }

  /** Where the rectangle fits one way or the other. */
  private List<Vec2> places() {
    var room = new MachineRoom(request, request.machineFloor());
    FreeArea all = room.all();
    double half = request.site().roomWidth().metres() / 2;
    return places(room.narrow(), half, p -> room.fits(p, all));
  }

  private List<Vec2> places(FreeArea room, double least, Predicate<Vec2> fits) {
    for (double step = Math.max(least, 1); ; step *= 1.25) {
      List<Vec2> places = lattice(room, step, fits);
      if (places.size() <= MOST) {
        places.sort(
            Comparator.comparingDouble(this::service)
                .thenComparingDouble(Vec2::y)
                .thenComparingDouble(Vec2::x));
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

  private MachineSpot spot(String name, Vec2 at) {
    int floor = request.machineFloor();
    return new MachineSpot(name, floor, at, service(at), needs(floor, at));
  }

  /** What a machine at this place is away from, as far as known, and whether it stands dry. */
  List<String> needs(int floor, Vec2 at) {
    var needs = new ArrayList<String>();
    request.site().power().ifPresent(p -> needs.add(need("power", at, p)));
    request.site().water().ifPresent(p -> needs.add(need("water", at, p)));
    nearestTruck(at).ifPresent(p -> needs.add(need("trucks", at, p)));
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

  /** What haul and feeders cost at this place. */
  double service(Vec2 at) {
    double haul = request.costs().haulPerMetre() * nearestTruck(at).map(at::distance).orElse(0.0);
    double power = request.site().power().map(at::distance).orElse(0.0);
    double water = request.site().water().map(at::distance).orElse(0.0);
    return haul + request.costs().feederPerMetre() * (power + water);
  }

  private Optional<Vec2> nearestTruck(Vec2 at) {
    return request.site().truckAccess().stream().min(Comparator.comparingDouble(at::distance));
  }
}
