package org.coatrun.geometry.exposure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Remains;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.units.Area;

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
    for (Patch p : form.boundary().patches()) {
      CoveredPatch.Use use = form.uses().of(p);
      Remains remains = new Remains(p.region(), kernel);
      if (use != CoveredPatch.Use.INSIDE) {
        touched(p, near, patches, remains, sums[0]);
        encased(p, near, inside, remains, sums[1]);
      }
      double left = remains.isWhole() ? p.area() : remains.area() * p.stretch();
      out.add(new CoveredPatch(p, use, remains.rest(), left, remains.taken()));
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

  private void touched(
      Patch p, Thing[] near, List<List<Patch>> patches, Remains remains, double[] sum) {
    double reach = contact.gap() + Contact.sagitta(p);
    for (int i = 0; i < near.length; i++) {
      if (near[i].bounds().overlaps(p.bounds(), reach)) {
        for (Patch b : patches.get(i)) {
          if (p.plane().dot(b.plane()) < -0.5 && b.bounds().overlaps(p.bounds(), reach)) {
            sum[i] += remains.less(contact.shade(p, b, remains, kernel)) * p.stretch();
          }
        }
      }
    }
  }

  private void encased(Patch p, Thing[] near, boolean[] inside, Remains remains, double[] sum) {
    for (int i = 0; i < near.length && !remains.isEmpty(); i++) {
      if (inside[i]
          && near[i].bounds().overlaps(p.bounds(), 0)
          && near[i].reachesBehind(p.plane(), kernel.tolerance().plane())) {
        Originals body = near[i].form().envelope();
        sum[i] += remains.less(body, p.plane(), p.bounds(), near[i].at()) * p.stretch();
      }
    }
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
