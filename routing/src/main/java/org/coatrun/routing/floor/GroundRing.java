package org.coatrun.routing.floor;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.units.Length;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Level ground around a building of which the model draws none. */
public final class GroundRing {

  /** The ring reaches so far under the slab's edge that no slit parts them, in metres. */
  private static final double LAP = 0.02;

  private static final double LEAST = 1;

  private GroundRing() {}

  /**
   * The ground within {@code width} of the outer edges of a floor's slab, corners left square;
   * courts and shafts inside the slab are no part of it. Empty for no width or no slab.
   */
  public static List<Region> around(FloorOutline floor, Length width) {
    Geometry slab = Planar.union(floor.plate());
    if (slab.isEmpty() || width.metres() <= LAP) {
      return List.of();
    }
    Geometry footprint = filled(slab);
    Geometry around =
        Planar.minus(Planar.grow(footprint, width.metres()), Planar.grow(footprint, -LAP));
    return Planar.regions(Planar.minus(around, Planar.minus(footprint, slab)), LEAST);
  }

  /** The slab with its holes closed. */
  private static Geometry filled(Geometry slab) {
    var shells = new ArrayList<Region>();
    for (Polygon p : Planar.polygons(slab, 0)) {
      shells.add(new Region(Planar.region(p).outline(), List.of()));
    }
    return Planar.union(shells);
  }
}
