package org.coatrun.shared.line;

import java.util.List;
import java.util.Objects;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/**
 * A storey seen from above, cut at ankle height: what carries a person and what stands in the way.
 *
 * @param storey its name, unique among the floors of a plan
 * @param elevation top of the slab
 * @param height from the top of the slab to the underside of what is above; positive
 * @param plate the slab; openings may be cut out of it or be named in {@code openings}, or both
 * @param walls what a hose goes around: concrete and masonry walls and cores; partitions that come
 *     after the spraying are left out
 * @param columns outlines of columns; their centres give the column lines along which pipe runs
 * @param openings where the slab is open to the storey below
 * @param spaces enclosed spaces, for the ventilation; may be empty
 * @param cover slabs, decks and roofs over it, which keep the weather off; may overlap
 * @param ground beside the slab and level with it, where the model draws none: an assumption; may
 *     reach a hair under the slab's edge
 */
public record FloorOutline(
    String storey,
    Length elevation,
    Length height,
    List<Region> plate,
    List<Region> walls,
    List<Region> columns,
    List<SlabOpening> openings,
    List<FloorSpace> spaces,
    List<Region> cover,
    List<Region> ground) {

  /** A floor of which nothing is known that covers it, and no ground beside it. */
  public FloorOutline(
      String storey,
      Length elevation,
      Length height,
      List<Region> plate,
      List<Region> walls,
      List<Region> columns,
      List<SlabOpening> openings,
      List<FloorSpace> spaces) {
    this(storey, elevation, height, plate, walls, columns, openings, spaces, List.of(), List.of());
  }

  public FloorOutline {
    Objects.requireNonNull(storey);
    Objects.requireNonNull(elevation);
    if (height.metres() <= 0) {
      throw new IllegalArgumentException("a floor without height: " + storey);
    }
    plate = List.copyOf(plate);
    walls = List.copyOf(walls);
    columns = List.copyOf(columns);
    openings = List.copyOf(openings);
    spaces = List.copyOf(spaces);
    cover = List.copyOf(cover);
    ground = List.copyOf(ground);
  }

  /** The same with ground beside it. */
  public FloorOutline withGround(List<Region> assumed) {
    return new FloorOutline(
        storey, elevation, height, plate, walls, columns, openings, spaces, cover, assumed);
  }

  /** Whether a point stands on ground that is assumed, and not on the slab. */
  public boolean onAssumedGround(Vec2 p) {
    return ground.stream().anyMatch(r -> r.contains(p))
        && plate.stream().noneMatch(r -> r.contains(p));
  }

  /** Whether both look the same from above, whatever their names and elevations. */
  public boolean sameOutline(FloorOutline o) {
    return plate.equals(o.plate)
        && walls.equals(o.walls)
        && columns.equals(o.columns)
        && ground.equals(o.ground)
        && openings.stream()
            .map(SlabOpening::region)
            .toList()
            .equals(o.openings.stream().map(SlabOpening::region).toList());
  }
}
