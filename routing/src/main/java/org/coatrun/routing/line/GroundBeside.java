package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.routing.floor.FreeArea;
import org.coatrun.routing.floor.GroundRing;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Region;

/**
 * Ground beside the building that is assumed where the model draws none: level with the machine's
 * floor, as wide as the job says. It carries machine, bags and hose; keep-outs hold there.
 */
final class GroundBeside {

  /** What a request is, where it stands on assumed ground. */
  static final String NEED = "stands on assumed ground: check that it is level, drained and firm";

  private GroundBeside() {}

  /**
   * The request with ground assumed, where no slab of the machine's floor has room for a machine or
   * a spot of the job file lies beside the slab; else the request itself.
   */
  static LineRequest assumed(LineRequest request) {
    if (request.floors().isEmpty() || request.site().ground().metres() == 0) {
      return request;
    }
    LineRequest with = with(request);
    boolean serves =
        request.spots().isEmpty()
            ? new SpotFinder(request).find().isEmpty() && !new SpotFinder(with).find().isEmpty()
            : request.spots().stream().anyMatch(s -> needsGround(with, s));
    return serves ? with : request;
  }

  /** Says that ground was assumed, where it was. */
  static Optional<Finding> finding(LineRequest request) {
    if (request.floors().isEmpty()) {
      return Optional.empty();
    }
    FloorOutline floor = request.floors().get(request.machineFloor());
    if (floor.ground().isEmpty()) {
      return Optional.empty();
    }
    String why =
        request.spots().isEmpty()
            ? "no slab there has room for machine and bags"
            : "a machine spot of the job file lies beside its slab";
    String sentence =
        floor.storey()
            + ": "
            + why
            + "; level ground was assumed "
            + request.wording().about(request.site().ground())
            + " wide around it.";
    return Optional.of(Finding.of(LineFinding.ASSUMED_GROUND, sentence));
  }

  private static LineRequest with(LineRequest request) {
    int f = request.machineFloor();
    List<FloorOutline> floors = new ArrayList<>(request.floors());
    List<Region> ring = GroundRing.around(floors.get(f), request.site().ground());
    floors.set(f, floors.get(f).withGround(ring));
    return request.withFloors(floors);
  }

  private static boolean needsGround(LineRequest with, MachineSpot spot) {
    FloorOutline floor = with.floors().get(spot.floor());
    return floor.onAssumedGround(spot.at()) && isFree(with, floor, spot);
  }

  private static boolean isFree(LineRequest with, FloorOutline floor, MachineSpot spot) {
    return FreeArea.of(floor, with.keepOutsOf(floor), with.limits().margin())
        .nearest(spot.at(), with.limits().riserGap())
        .isPresent();
  }
}
