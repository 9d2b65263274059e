package org.coatrun.shared.line;

import java.util.List;
import java.util.Objects;

/**
 * All that a line plan is made from.
 *
 * @param floors from the lowest up
 * @param keepOuts of the job file
 * @param risers that the job file names, on top of those found in the floors
 * @param findRisers whether openings, stairs and slab edges are looked for
 * @param work what must be sprayed
 * @param spots machine spots of the job file; where empty, spots are looked for
 * @param machineFloor index of the floor on which spots are looked for
 * @param mostMachines most machine positions used
 * @param searchNodes where the search for the best cover stops at the latest
 * @param wording how sentences say quantities
 */
public record LineRequest(
    List<FloorOutline> floors,
    List<KeepOut> keepOuts,
    List<Riser> risers,
    boolean findRisers,
    List<WorkPiece> work,
    List<MachineSpot> spots,
    int machineFloor,
    SiteFacts site,
    LineLimits limits,
    ReachLimits reach,
    LineCosts costs,
    LineStock stock,
    Utilities utilities,
    int mostMachines,
    int searchNodes,
    Wording wording) {

  public LineRequest {
    floors = List.copyOf(floors);
    keepOuts = List.copyOf(keepOuts);
    risers = List.copyOf(risers);
    work = List.copyOf(work);
    spots = List.copyOf(spots);
    Objects.requireNonNull(site);
    Objects.requireNonNull(wording);
    for (int f = 1; f < floors.size(); f++) {
      if (floors.get(f).elevation().compareTo(floors.get(f - 1).elevation()) <= 0) {
        throw new IllegalArgumentException(
            "floors are not in order from the lowest up: " + floors.get(f).storey());
      }
    }
    int count = floors.size();
    if (machineFloor < 0
        || machineFloor >= Math.max(1, count)
        || spots.stream().anyMatch(s -> s.floor() >= count)
        || risers.stream().anyMatch(r -> r.highest() >= count)) {
      throw new IllegalArgumentException("a machine spot or riser on a floor that is not there");
    }
    if (mostMachines < 1 || searchNodes < 1) {
      throw new IllegalArgumentException("a plan without a machine or without a search");
    }
  }

  /** Floors and work with the defaults of common practice: one machine on the lowest floor. */
  public static LineRequest of(List<FloorOutline> floors, List<WorkPiece> work) {
    return new LineRequest(
        floors,
        List.of(),
        List.of(),
        true,
        work,
        List.of(),
        0,
        SiteFacts.unknown(),
        LineLimits.commonPractice(),
        ReachLimits.commonPractice(),
        LineCosts.estimates(),
        LineStock.commonPractice(),
        Utilities.commonPractice(),
        1,
        3000,
        Wording.customary());
  }

  /** The same with these machine spots, of which at most so many are used. */
  public LineRequest withSpots(List<MachineSpot> others, int most) {
    return new LineRequest(
        floors,
        keepOuts,
        risers,
        findRisers,
        work,
        others,
        machineFloor,
        site,
        limits,
        reach,
        costs,
        stock,
        utilities,
        most,
        searchNodes,
        wording);
  }

  /** The same with other limits. */
  public LineRequest withLimits(LineLimits others) {
    return new LineRequest(
        floors,
        keepOuts,
        risers,
        findRisers,
        work,
        spots,
        machineFloor,
        site,
        others,
        reach,
        costs,
        stock,
        utilities,
        mostMachines,
        searchNodes,
        wording);
  }

  /** The same with these risers of the job file, on top of those found or alone. */
  public LineRequest withRisers(List<Riser> others, boolean findMore) {
    return new LineRequest(
        floors,
        keepOuts,
        others,
        findMore,
        work,
        spots,
        machineFloor,
        site,
        limits,
        reach,
        costs,
        stock,
        utilities,
        mostMachines,
        searchNodes,
        wording);
  }

  /** The same on a site that is better known. */
  public LineRequest withSite(SiteFacts other) {
    return new LineRequest(
        floors,
        keepOuts,
        risers,
        findRisers,
        work,
        spots,
        machineFloor,
        other,
        limits,
        reach,
        costs,
        stock,
        utilities,
        mostMachines,
        searchNodes,
        wording);
  }

  /** The same with other floors, as many as there were. */
  public LineRequest withFloors(List<FloorOutline> others) {
    return new LineRequest(
        others,
        keepOuts,
        risers,
        findRisers,
        work,
        spots,
        machineFloor,
        site,
        limits,
        reach,
        costs,
        stock,
        utilities,
        mostMachines,
        searchNodes,
        wording);
  }

  /** The same whose plan is worded otherwise. */
  public LineRequest withWording(Wording other) {
    return new LineRequest(
        floors,
        keepOuts,
        risers,
        findRisers,
        work,
        spots,
        machineFloor,
        site,
        limits,
        reach,
        costs,
        stock,
        utilities,
        mostMachines,
        searchNodes,
        other);
  }

  /** The same with these keep-outs. */
  public LineRequest withKeepOuts(List<KeepOut> others) {
    return new LineRequest(
        floors,
        others,
        risers,
        findRisers,
        work,
        spots,
        machineFloor,
        site,
        limits,
        reach,
        costs,
        stock,
        utilities,
        mostMachines,
        searchNodes,
        wording);
  }

  /** The keep-outs of a floor. */
  public List<Region> keepOutsOf(FloorOutline floor) {
    return keepOuts.stream()
        .filter(k -> k.storey().equals(floor.storey()))
        .map(KeepOut::region)
        .toList();
  }
}
