package org.coatrun.geometry.exposure;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Remains;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.units.Area;
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
    Box around = form.bounds().grown(contact.gap() + sagitta(form));
    List<Neighbour> near = new ArrayList<>(neighbours.size());
    for (Thing thing : neighbours) {
      near.add(new Neighbour(thing, form, around));
    }
    List<CoveredPatch> out = new ArrayList<>();
    for (Patch p : form.boundary().patches()) {
      CoveredPatch.Use use = form.uses().of(p);
      Remains remains = Remains.of(p, kernel);
      if (use != CoveredPatch.Use.INSIDE) {
        touched(p, near, remains);
        encased(p, near, remains);
      }
      double left = remains.isWhole() ? p.area() : remains.area() * p.stretch();
      out.add(new CoveredPatch(p, use, remains.remainder(), left));
    }
    return Exposure.of(form, out, covers(near));
  }

  /** A neighbour while a body is looked at, and what it covers of that. */
  private static final class Neighbour {
    private final Thing thing;
    private final Box bounds;
    private final boolean inside;

    /** Its patches near the body, as they were made, and where they stand once that was asked. */
    private final Patch[] patches;

    private final Patch[] standing;
    private double touched;
    private double encased;

    private Neighbour(Thing thing, Form form, Box around) {
      this.thing = thing;
      this.bounds = thing.bounds();
      this.inside = mayHold(bounds.common(form.bounds()));
      this.patches = thing.patchesNear(around).toArray(new Patch[0]);
      this.standing = new Patch[patches.length];
    }

    private Patch standing(int i) {
      if (standing[i] == null) {
        standing[i] = patches[i].moved(thing.at());
      }
      return standing[i];
    }
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

  private void touched(Patch p, List<Neighbour> near, Remains remains) {
    double reach = contact.gap() + Contact.sagitta(p);
    for (Neighbour n : near) {
      if (n.bounds.overlaps(p.bounds(), reach)) {
        for (int i = 0; i < n.patches.length; i++) {
          if (Contact.areFacing(p, n.patches[i])
              && n.standing(i).bounds().overlaps(p.bounds(), reach)) {
            Geometry shade = contact.shade(p, n.standing(i), remains);
            n.touched += remains.less(shade) * p.stretch();
          }
        }
      }
    }
  }

  private void encased(Patch p, List<Neighbour> near, Remains remains) {
    for (Neighbour n : near) {
      if (n.inside
          && !remains.isEmpty()
          && n.bounds.overlaps(p.bounds(), 0)
          && n.thing.reachesBehind(p.plane(), kernel.tolerance().plane())) {
        Originals body = n.thing.form().envelope();
        n.encased += remains.less(body, p.plane(), p.bounds(), n.thing.at()) * p.stretch();
      }
    }
  }

  private static List<Cover> covers(List<Neighbour> near) {
    List<Cover> out = new ArrayList<>();
    for (Neighbour n : near) {
      add(n.thing, Cover.Kind.CONTACT, n.touched, out);
      add(n.thing, Cover.Kind.ENCASED, n.encased, out);
    }
    return out;
  }

  private static void add(Thing by, Cover.Kind kind, double area, List<Cover> out) {
    if (area > 1e-9) {
      out.add(new Cover(by.id(), kind, Area.ofSquareMetres(area)));
    }
  }
}
