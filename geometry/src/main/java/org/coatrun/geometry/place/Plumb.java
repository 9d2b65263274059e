package org.coatrun.geometry.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * What plumb lines through bodies meet: the faces that look up and those that look down.
 *
 * <p>One tree in plan for each layer of heights, so that what is asked of one storey of a tower
 * does not go through all of them.
 */
final class Plumb {

  /** Faces steeper than this share of level are no floor and no ceiling. */
  private static final double LEVEL = 0.5;

  private static final int MOST_LAYERS = 256;

  /** Faces in a layer, so that neither trees nor layers are many. */
  private static final int IN_LAYER = 64;

  /** Where a line meets a face may lie this much outside the face's box. */
  private static final double NOISE = 1e-6;

  private static final Comparator<Hit> UPWARDS =
      Comparator.comparingDouble(Hit::z).thenComparing(Hit::id);

  /** A face that a plumb line meets. */
  record Hit(ElementId id, boolean up, double z) {}

  private record Sheet(Thing of, Patch patch, Box box) {}

  private final STRtree[] layers;
  private final double bottom;
  private final double thickness;

  /** Lines through the faces of these bodies. */
  Plumb(List<Thing> bodies) {
    List<Sheet> sheets = new ArrayList<>();
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Thing body : bodies) {
      for (Patch p : body.form().boundary().patches()) {
        if (Math.abs(p.plane().nz()) > LEVEL) {
          Box box = p.bounds().moved(body.at());
          sheets.add(new Sheet(body, p, box));
          low = Math.min(low, box.minZ());
          high = Math.max(high, box.maxZ());
        }
      }
    }
    int count = Math.min(MOST_LAYERS, (sheets.size() + IN_LAYER - 1) / IN_LAYER);
    bottom = low;
    thickness = high > low ? (high - low) / count : 1;
    layers = new STRtree[count];
    for (int i = 0; i < count; i++) {
      layers[i] = new STRtree();
    }
    sheets.forEach(this::insert);
    for (STRtree layer : layers) {
      layer.build();
    }
  }

  private void insert(Sheet sheet) {
    Box b = sheet.box();
    Envelope plan = new Envelope(b.minX(), b.maxX(), b.minY(), b.maxY());
    for (int i = layer(b.minZ() - NOISE); i <= layer(b.maxZ() + NOISE); i++) {
      layers[i].insert(plan, sheet);
    }
  }

  /** How many layers there are; none where no body has a face to meet. */
  int layers() {
    return layers.length;
  }

  /** The layer that a height lies in; the lowest or uppermost one where it is beyond them. */
  int layer(double height) {
    double at = Math.floor((height - bottom) / thickness);
    return (int) Math.max(0, Math.min(layers.length - 1, at));
  }

  /** The faces that a plumb line meets in a layer, from the lowest up. */
  List<Hit> hits(int layer, double x, double y) {
    if (layers[layer].isEmpty()) {
      return List.of();
    }
    List<Hit> hits = new ArrayList<>();
    for (Object o : layers[layer].query(new Envelope(x, x, y, y))) {
      Sheet sheet = (Sheet) o;
      double z = height(sheet, x, y);
      // what reaches through several layers is met in one of them
      if (layer(z) == layer && meets(sheet, x, y, z)) {
        hits.add(new Hit(sheet.of().id(), sheet.patch().plane().nz() > 0, z));
      }
    }
    hits.sort(UPWARDS);
    return hits;
  }

  /** Where a line meets the plane of a face. */
  private static double height(Sheet s, double x, double y) {
    Plane p = s.patch().plane();
    Vec3 at = s.of().at();
    return at.z() - p.height(x - at.x(), y - at.y(), 0) / p.nz();
  }

  private static boolean meets(Sheet s, double x, double y, double z) {
    Plane p = s.patch().plane();
    Vec3 at = s.of().at();
    double dx = x - at.x();
    double dy = y - at.y();
    double dz = z - at.z();
    Coordinate foot = new Coordinate(p.u(dx, dy, dz), p.v(dx, dy, dz));
    return SimplePointInAreaLocator.locate(foot, s.patch().region()) != Location.EXTERIOR;
  }
}
