package org.coatrun.geometry.exposure;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.DrawnHoles;
import org.coatrun.geometry.solid.Face;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.geometry.solid.Solid;
import org.coatrun.geometry.solid.SolidTree;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Fills small holes that are drawn in a body itself, and leaves out cutters that only drill holes
 * under the threshold: those that pass through at least two faces of the host, and in each stay
 * clear of its edge with a mouth smaller than allowed.
 */
public final class SmallHoles {

  private static final double CLEAR = 1e-6;

  private SmallHoles() {}

  /** The tree without such holes and cutters; the same tree where there are none. */
  public static SolidTree without(SolidTree tree, double mouth, Kernel kernel) {
    return uncut(filled(tree, mouth), mouth, kernel);
  }

  private static SolidTree filled(SolidTree tree, double mouth) {
    if (tree instanceof SolidTree.Leaf leaf) {
      Solid filled = DrawnHoles.filled(leaf.solid(), mouth);
      return filled == leaf.solid() ? tree : new SolidTree.Leaf(filled);
    }
    if (tree instanceof SolidTree.Union u) {
      return new SolidTree.Union(u.parts().stream().map(p -> filled(p, mouth)).toList());
    }
    if (tree instanceof SolidTree.Difference d) {
      SolidTree host = filled(d.host(), mouth);
      return host == d.host() ? tree : new SolidTree.Difference(host, d.cutters());
    }
    return tree;
  }

  private static SolidTree uncut(SolidTree tree, double mouth, Kernel kernel) {
    if (!(tree instanceof SolidTree.Difference d) || !(d.host() instanceof SolidTree.Leaf host)) {
      return tree;
    }
    List<SolidTree> kept = new ArrayList<>();
    for (SolidTree cutter : d.cutters()) {
      if (!isHole(host.solid(), cutter, mouth, kernel)) {
        kept.add(cutter);
      }
    }
    if (kept.size() == d.cutters().size()) {
      return tree;
    }
    return kept.isEmpty() ? host : new SolidTree.Difference(host, kept);
  }

  private static boolean isHole(Solid host, SolidTree cutter, double mouth, Kernel kernel) {
    Originals tool = Originals.of(cutter, kernel.tolerance());
    int mouths = 0;
    for (Face f : host.faces()) {
      Box shared = f.bounds().common(tool.bounds());
      if (shared.isEmpty()) {
        continue;
      }
      Geometry face = host.polygon(f);
      Envelope e = face.getEnvelopeInternal();
      double[] window = {e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY()};
      Geometry fill = tool.fill(kernel, f.plane(), -1, f.bounds(), window);
      Geometry cut = fill.isEmpty() ? fill : kernel.overlay().common(face, fill);
      if (!cut.isEmpty()) {
        if (cut.getArea() >= mouth || !isClear(face, fill)) {
          return false;
        }
        mouths++;
      }
    }
    return mouths >= 2;
  }

  private static boolean isClear(Geometry face, Geometry fill) {
    Geometry edge = face.getBoundary();
    for (Coordinate c : fill.getCoordinates()) {
      var point = face.getFactory().createPoint(c);
      if (!face.contains(point) || edge.distance(point) < CLEAR) {
        return false;
      }
    }
    return true;
  }
}
