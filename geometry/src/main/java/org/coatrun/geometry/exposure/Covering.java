package org.coatrun.geometry.exposure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.units.Area;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Takes away from each patch of a body what its neighbours cover: first by contact, neighbour after
 * neighbour in the order of their numbers, then what stands inside a neighbour. What two cover
 * counts for the first, so the parts add up.
 */
public final class Covering {

  /** Overlaps of boxes thinner than this hold no body inside another. */
  private static final double TOUCH = 1e-6;

  private final Contact contact;
  private final Kernel kernel;

  /** For one thread. */
  public Covering(ExposureOptions options, Kernel kernel) {
    this.contact = new Contact(options.contactGap().metres());
    this.kernel = kernel;
  }

  /**
   * What neighbours leave of a body.
   *
   * @param neighbours sorted by number, each near the body, in the axes of its form
   */
  public Exposure of(Form form, List<Thing> neighbours) {
    double[][] sums = new double[2][neighbours.size()];
    Thing[] near = neighbours.toArray(new Thing[0]);
    List<List<Patch>> patches = new ArrayList<>();
    boolean[] inside = new boolean[near.length];
    Box around = form.bounds().grown(contact.gap() + sagitta(form));
    for (int i = 0; i < near.length; i++) {
      inside[i] = mayHold(near[i].bounds().common(form.bounds()));
      patches.add(near[i].patchesNear(around));
    }
    List<CoveredPatch> out = new ArrayList<>();
    Uses uses = new Uses(form);
    for (Patch p : form.boundary().patches()) {
      List<Geometry> shades = new ArrayList<>();
      Geometry touched = touched(p, near, patches, sums[0], shades);
      Geometry rest = encased(p, near, inside, touched, sums[1]);
      double left = rest == null ? p.area() : rest.getArea() * p.stretch();
      List<Geometry> known = isSame(rest, touched) ? shades : List.of();
      out.add(new CoveredPatch(p, uses.of(p), rest == null ? p.region() : rest, left, known));
    }
    return Exposure.of(form, out, covers(near, sums));
  }

  private static double sagitta(Form form) {
    double most = 0;
    for (Patch p : form.boundary().patches()) {
      most = Math.max(most, Contact.sagitta(p));
    }
    return most;
  }

  private static boolean mayHold(Box shared) {
    return shared.maxX() - shared.minX() > TOUCH
        && shared.maxY() - shared.minY() > TOUCH
        && shared.maxZ() - shared.minZ() > TOUCH;
  }

  /** What contact leaves, or null where nothing touches the patch. */
  private Geometry touched(
      Patch p, Thing[] near, List<List<Patch>> patches, double[] sum, List<Geometry> shades) {
    Geometry rest = null;
    double reach = contact.gap() + Contact.sagitta(p);
    for (int i = 0; i < near.length; i++) {
      if (near[i].bounds().overlaps(p.bounds(), reach)) {
        rest = touched(p, patches.get(i), rest, reach, sum, i, shades);
      }
    }
    return rest;
  }

  /** What of that stands in no neighbour, or the same where nothing encases the patch. */
  private Geometry encased(
      Patch p, Thing[] near, boolean[] inside, Geometry touched, double[] sum) {
    Geometry rest = touched;
    for (int i = 0; i < near.length; i++) {
      if (inside[i] && near[i].bounds().overlaps(p.bounds(), 0)) {
        rest = encased(p, near[i], rest, sum, i);
      }
    }
    return rest;
  }

  private Geometry touched(
      Patch p,
      List<Patch> others,
      Geometry before,
      double reach,
      double[] sum,
      int i,
      List<Geometry> shades) {
    Geometry rest = before;
    for (Patch b : others) {
      if (p.plane().dot(b.plane()) < -0.5 && b.bounds().overlaps(p.bounds(), reach)) {
        Geometry whole = rest == null ? p.region() : rest;
        if (whole.isEmpty()) {
          return whole;
        }
        Geometry shade = contact.shade(p, b, whole, kernel);
        if (!shade.isEmpty()) {
          shades.add(shade);
          rest = kernel.overlay().lessInPieces(whole, shade);
          sum[i] += (whole.getArea() - rest.getArea()) * p.stretch();
        }
      }
    }
    return rest;
  }

  private Geometry encased(Patch p, Thing other, Geometry before, double[] sum, int i) {
    Geometry whole = before == null ? p.region() : before;
    if (whole.isEmpty() || !other.reachesBehind(p.plane(), kernel.tolerance().plane())) {
      return before;
    }
    Envelope e = whole.getEnvelopeInternal();
    double[] window = {e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY()};
    Geometry fill = other.fill(kernel, p.plane(), p.bounds(), window);
    if (fill.isEmpty()) {
      return before;
    }
    Geometry rest = kernel.overlay().lessInPieces(whole, fill);
    if (isSame(rest, whole)) {
      return before;
    }
    sum[i] += (whole.getArea() - rest.getArea()) * p.stretch();
    return rest;
  }

  /** Whether nothing was taken away: the region is handed back itself then. */
  @SuppressWarnings("ReferenceEquality") // equality of regions would be an overlay of its own
  private static boolean isSame(Geometry rest, Geometry whole) {
    return rest == whole;
  }

  private static List<Cover> covers(Thing[] near, double[][] sums) {
    List<Cover> out = new ArrayList<>();
    for (int i = 0; i < near.length; i++) {
      for (Cover.Kind kind : Arrays.asList(Cover.Kind.CONTACT, Cover.Kind.ENCASED)) {
        double area = sums[kind == Cover.Kind.CONTACT ? 0 : 1][i];
        if (area > 1e-9) {
          out.add(new Cover(near[i].id(), kind, Area.ofSquareMetres(area)));
        }
      }
    }
    return out;
  }
}
