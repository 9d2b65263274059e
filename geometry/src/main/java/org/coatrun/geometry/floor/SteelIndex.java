package org.coatrun.geometry.floor;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.coatrun.shared.surface.Extent;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds steel by its place in plan. */
final class SteelIndex {

  private final STRtree tree = new STRtree();
  private final List<Extent> steel;

  SteelIndex(Collection<Extent> all) {
    steel = all.stream().sorted(Comparator.comparing(Extent::id)).toList();
    for (int i = 0; i < steel.size(); i++) {
      tree.insert(envelope(steel.get(i)), i);
    }
    tree.build();
  }

  private static Envelope envelope(Extent e) {
    return new Envelope(e.low().x(), e.high().x(), e.low().y(), e.high().y());
  }

  /** Steel whose box meets the region's box, in the order of its numbers. */
  List<Extent> near(Geometry region) {
    List<?> met = tree.query(region.getEnvelopeInternal());
    return met.stream().mapToInt(Integer.class::cast).sorted().mapToObj(steel::get).toList();
  }

  /** The highest steel whose middle lies over the region; minus infinity where there is none. */
  double highestOver(Geometry region) {
    PreparedGeometry over = PreparedGeometryFactory.prepare(region);
    double highest = Double.NEGATIVE_INFINITY;
    for (Extent e : near(region)) {
      if (e.high().z() > highest && over.covers(middle(e))) {
        highest = e.high().z();
      }
    }
    return highest;
  }

  private static Geometry middle(Extent e) {
    return Plan.FACTORY.createPoint(
        new Coordinate(0.5 * (e.low().x() + e.high().x()), 0.5 * (e.low().y() + e.high().y())));
  }
}
