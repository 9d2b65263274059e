package org.coatrun.geometry.deck;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.coatrun.geometry.exposure.CoveredPatch;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.FluteVoid;
import org.coatrun.shared.surface.SoffitMeasure;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Volume;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/**
 * Finds the voids between a member and decks whose flutes run across it: over the open part of a
 * face that looks at the deck, up to the deck's soffit. May be used by several threads.
 *
 * <p>Flutes run across where they are within 45° of square to the member; where they run along it
 * the member is coated as it stands, and there are no voids to fill.
 */
public final class FluteVoids {

  /** Higher than any flute of a deck: 12 in and a little. */
  private static final double HIGHEST = 0.32;

  private static final double FACES = -0.95;
  private static final double ACROSS = Math.sqrt(0.5);
  private static final double NOTHING = 1e-9;

  private final Map<Form, Soffit> soffits = new ConcurrentHashMap<>();

  /** What the underside of a deck measures. */
  public SoffitMeasure measure(Form deck) {
    return soffit(deck).measure();
  }

  /** The voids over a member, in the order of the decks; those near in the axes of its form. */
  public List<FluteVoid> of(Exposure exposure, List<Thing> near, Kernel kernel) {
    List<FluteVoid> out = new ArrayList<>();
    if (exposure.form().soffitOnly() || exposure.form().axis().isEmpty()) {
      return out;
    }
    Vec3 axis = exposure.form().axis().get().direction();
    for (Thing deck : near) {
      if (deck.form().soffitOnly() && runsAcross(soffit(deck.form()), axis)) {
        over(exposure, deck, kernel).ifPresent(out::add);
      }
    }
    return out;
  }

  private Soffit soffit(Form deck) {
    return soffits.computeIfAbsent(deck, Soffit::of);
  }

  private static boolean runsAcross(Soffit soffit, Vec3 axis) {
    return soffit.flutes().isPresent() && Math.abs(soffit.flutes().get().dot(axis)) < ACROSS;
  }

  private Optional<FluteVoid> over(Exposure exposure, Thing deck, Kernel kernel) {
    Soffit soffit = soffit(deck.form());
    List<Patch> patches = deck.moved(soffit.patches(), exposure.form().bounds().grown(HIGHEST));
    double[] sums = new double[3];
    for (CoveredPatch p : exposure.patches()) {
      Plane q = p.patch().plane();
      Vec3 d = soffit.down();
      boolean faces = q.along(d) < FACES;
      if (faces && p.use() == CoveredPatch.Use.SIDE && !p.rest().isEmpty()) {
        add(p, patches, kernel, sums);
      }
    }
    return sums[2] > NOTHING
        ? Optional.of(
            new FluteVoid(
                deck.id(),
                Area.ofSquareMetres(sums[0]),
                Area.ofSquareMetres(sums[1]),
                Volume.ofCubicMetres(sums[2])))
        : Optional.empty();
  }

  private static void add(CoveredPatch p, List<Patch> soffit, Kernel kernel, double[] sums) {
    Plane plane = p.patch().plane();
    Geometry open = p.rest().region();
    for (Patch above : soffit) {
      double cos = -above.plane().dot(plane);
      if (cos > 1e-3 && above.bounds().overlaps(p.patch().bounds(), HIGHEST)) {
        Geometry shade = kernel.overlay().common(open, above.onto(plane));
        double height = shade.isEmpty() ? 0 : height(plane, above.plane(), shade.getCentroid());
        if (height > 0 && height < HIGHEST) {
          sums[0] += shade.getArea();
          sums[1] += shade.getArea() / cos;
          sums[2] += shade.getArea() * height;
          open = kernel.overlay().less(open, shade);
        }
      }
    }
  }

  /**
   * From a point of one plane along its normal to another; linear, so the mean is at the middle.
   */
  private static double height(Plane from, Plane to, Point at) {
    double x = from.x(at.getX(), at.getY());
    double y = from.y(at.getX(), at.getY());
    double z = from.z(at.getX(), at.getY());
    return -to.height(x, y, z) / to.dot(from);
  }
}
