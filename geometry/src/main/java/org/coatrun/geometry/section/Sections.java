package org.coatrun.geometry.section;

import java.util.Arrays;
import java.util.Optional;
import org.coatrun.geometry.build.Run;
import org.coatrun.geometry.exposure.Axis;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;

/**
 * The section of a member from its exposed surface.
 *
 * <p>The heated perimeter is the one that at least a quarter of the length reaches, measured over
 * stretches of 1.5 m or more, or of a quarter of a shorter member: a short covered or uncovered
 * piece, such as a connection, does not decide. Where the model draws the profile, area and contour
 * are the profile's own; else area and contour come from slices. A member whose section changes is
 * taken where contour over area is greatest, and it is said so: at the less favourable end of a
 * drawn taper, else at one of seven stations, of which the least favourable is passed over, since
 * it may stand in a hole or a cope; pieces shorter than the box about them is round have no such
 * stations.
 */
public final class Sections {

  private static final Length REFERENCE = SectionMeasure.COAT_REFERENCE;
  private static final double SAME = 1e-6;

  private Sections() {}

  /** The section, or empty where the body has no axis or nothing is left to slice. */
  public static Optional<SectionMeasure> of(
      Exposure exposure, Optional<Run> run, CoatFactors coats, Kernel kernel) {
    Optional<Axis> axis = exposure.form().axis();
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
    Traces traces = new Traces(exposure, axis.get());
    double corner = cornerFactor(exposure, axis.get(), traces, share, coats, kernel);
    if (run.isPresent()) {
      return Optional.of(drawn(run.get(), share, box, corner));
    }
    Stations stations = Stations.of(exposure, axis.get(), traces, kernel);
    boolean varies = axis.get().length() > box.whole() && stations.varies();
    return sliced(stations, varies, contour, share, box, corner);
  }

  /**
   * From slices: mean contour and middle area, or the least favourable station's where it differs.
   */
  private static Optional<SectionMeasure> sliced(
      Stations stations,
      boolean varies,
      double contour,
      double share,
      BoxSides box,
      double corner) {
    double steel = varies ? stations.steelAtWorst() : stations.steel();
    double around = varies ? stations.contourAtWorst() : contour;
    return steel > 0
        ? Optional.of(
            measure(
                steel,
                around,
                share * around,
                box,
                SectionMeasure.Basis.AS_DRAWN,
                box.whole(),
                corner,
                varies))
        : Optional.empty();
  }

  /** Of the coat where the exposed share of the contour is nearest to the member's. */
  private static double cornerFactor(
      Exposure exposure, Axis axis, Traces traces, double share, CoatFactors coats, Kernel kernel) {
    double station = -1;
    double least = Double.POSITIVE_INFINITY;
    for (double place : Stations.PLACES) {
      double apart = Math.abs(traces.exposedShare(place) - share);
      if (apart < least - SAME) {
        least = apart;
        station = place;
      }
      if (least <= SAME) {
        break;
      }
    }
    return station < 0
        ? 0
        : coats.of(
            traces.at(station).exposed(),
            Stations.slice(exposure, axis, station, kernel),
            REFERENCE.metres());
  }

  private static SectionOutline worst(Run run) {
    if (!run.tapered()) {
      return run.start();
    }
    double a = run.start().outerPerimeter() / run.start().area();
    double b = run.end().outerPerimeter() / run.end().area();
    return b > a ? run.end() : run.start();
  }

  private static SectionMeasure drawn(Run run, double share, BoxSides box, double corner) {
    SectionOutline o = worst(run);
    double contour = o.outerPerimeter();
    return measure(
        o.area(),
        contour,
        share * contour,
        box,
        o.basis(),
        o.bounds().perimeter(),
        corner,
        run.tapered());
  }

  private static SectionMeasure measure(
      double steel,
      double contour,
      double heated,
      BoxSides box,
      SectionMeasure.Basis basis,
      double boxLength,
      double corner,
      boolean varies) {
    double open = box.whole() > 0 ? Math.min(1, box.heated() / box.whole()) : 1;
    return new SectionMeasure(
        Area.ofSquareMetres(steel),
        Length.ofMetres(contour),
        Length.ofMetres(heated),
        Length.ofMetres(boxLength),
        Length.ofMetres(open * boxLength),
        basis,
        corner,
        varies);
  }

  static double quantile(double[] values, double share) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.min(sorted.length - 1L, Math.round(share * (sorted.length - 1)))];
  }
}
