package org.coatrun.geometry.section;

import java.util.Arrays;
import java.util.Optional;
import org.coatrun.geometry.build.Run;
import org.coatrun.geometry.exposure.Axis;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.locationtech.jts.geom.Geometry;

/**
 * The section of a member from its exposed surface.
 *
 * <p>The heated perimeter is the one that at least a quarter of the length reaches, measured over
 * stretches of 1.5 m or more: a short covered or uncovered piece does not decide. Where the model
 * draws the profile, area and contour are the profile's own; else area and contour come from
 * slices. A tapered member is taken where heated perimeter over area is greatest.
 */
public final class Sections {

  private static final double[] STATIONS = {0.13, 0.29, 0.37, 0.5, 0.61, 0.73, 0.87};
  private static final Length REFERENCE = SectionMeasure.COAT_REFERENCE;
  private static final double SAME = 1e-6;

  private Sections() {}

  /** The section, or empty where the body has no axis or nothing is left to slice. */
  public static Optional<SectionMeasure> of(
      Exposure exposure, Optional<Run> run, CoatFactors coats, Kernel kernel) {
    Optional<Axis> axis = exposure.thing().axis();
    if (axis.isEmpty() || !(axis.get().length() > 0)) {
      return Optional.empty();
    }
    Windows windows = Windows.of(exposure, axis.get());
    double contour = quantile(windows.outline, 0.5);
    double heated = quantile(windows.heated, 0.75);
    if (!(contour > 0)) {
      return Optional.empty();
    }
    BoxSides box = BoxSides.of(exposure, axis.get());
    double share = Math.min(1, heated / contour);
    double corner = cornerFactor(exposure, axis.get(), heated, coats, kernel);
    if (run.isPresent()) {
      return Optional.of(drawn(worst(run.get()), share, box, corner));
    }
    double steel = steel(exposure, axis.get(), kernel);
    return steel > 0
        ? Optional.of(
            measure(
                steel,
                contour,
                share * contour,
                box,
                SectionMeasure.Basis.AS_DRAWN,
                box.whole(),
                corner))
        : Optional.empty();
  }

  /** Of the coat where the exposed contour is nearest to the heated perimeter. */
  private static double cornerFactor(
      Exposure exposure, Axis axis, double heated, CoatFactors coats, Kernel kernel) {
    Trace nearest = null;
    double station = 0;
    for (double s : STATIONS) {
      Trace trace = Trace.of(exposure, axis.at(axis.low() + s * axis.length()));
      double apart = Math.abs(trace.length() - heated);
      if (nearest == null || apart < Math.abs(nearest.length() - heated) - SAME) {
        nearest = trace;
        station = s;
      }
    }
    Geometry steel = slice(exposure, axis, station, kernel);
    return coats.of(nearest, steel, REFERENCE.metres(), kernel);
  }

  private static SectionOutline worst(Run run) {
    double a = run.start().outerPerimeter() / run.start().area();
    double b = run.end().outerPerimeter() / run.end().area();
    return b > a ? run.end() : run.start();
  }

  private static SectionMeasure drawn(SectionOutline o, double share, BoxSides box, double corner) {
    double contour = o.outerPerimeter();
    return measure(
        o.area(), contour, share * contour, box, o.basis(), o.bounds().perimeter(), corner);
  }

  private static SectionMeasure measure(
      double steel,
      double contour,
      double heated,
      BoxSides box,
      SectionMeasure.Basis basis,
      double boxLength,
      double corner) {
    double open = box.whole() > 0 ? Math.min(1, box.heated() / box.whole()) : 1;
    return new SectionMeasure(
        Area.ofSquareMetres(steel),
        Length.ofMetres(contour),
        Length.ofMetres(heated),
        Length.ofMetres(boxLength),
        Length.ofMetres(open * boxLength),
        basis,
        corner);
  }

  private static double steel(Exposure exposure, Axis axis, Kernel kernel) {
    double[] areas = new double[STATIONS.length];
    for (int i = 0; i < areas.length; i++) {
      areas[i] = slice(exposure, axis, STATIONS[i], kernel).getArea();
    }
    return quantile(areas, 0.5);
  }

  private static Geometry slice(Exposure exposure, Axis axis, double station, Kernel kernel) {
    Thing thing = exposure.thing();
    Plane across = axis.at(axis.low() + station * axis.length());
    return thing.originals().fill(kernel, across, 1, thing.bounds(), null);
  }

  private static double quantile(double[] values, double share) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.min(sorted.length - 1L, Math.round(share * (sorted.length - 1)))];
  }
}
