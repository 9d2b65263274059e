package org.coatrun.geometry.section;

import org.coatrun.geometry.exposure.Axis;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Plane;
import org.locationtech.jts.geom.Geometry;

/** Slices across a member at several places along it. */
final class Stations {

  /** Shares of the length, clear of most connections and not evenly spaced. */
  static final double[] PLACES = {0.13, 0.29, 0.37, 0.5, 0.61, 0.73, 0.87};

  /** Contour over area this much above the middle one is another section. */
  private static final double VARIES = 1.01;

  private final double[] areas;
  private final double[] contours;
  private final int worst;

  private Stations(double[] areas, double[] contours) {
    this.areas = areas;
    this.contours = contours;
    this.worst = secondWorst();
  }

  static Stations of(Exposure exposure, Axis axis, Traces traces, Kernel kernel) {
    double[] areas = new double[PLACES.length];
    double[] contours = new double[PLACES.length];
    for (int i = 0; i < areas.length; i++) {
      areas[i] = slice(exposure, axis, PLACES[i], kernel).getArea();
      contours[i] = traces.at(PLACES[i]).whole().length();
    }
    return new Stations(areas, contours);
  }

  /** The steel that a plane across the member cuts, in the plane's axes. */
  static Geometry slice(Exposure exposure, Axis axis, double place, Kernel kernel) {
    Form form = exposure.form();
    Plane across = axis.at(axis.low() + place * axis.length());
    return form.originals().fill(kernel, across, 1, form.bounds(), null);
  }

  /** Whether the least favourable section differs from the usual one. */
  boolean varies() {
    double[] ratios = new double[areas.length];
    for (int i = 0; i < ratios.length; i++) {
      ratios[i] = ratio(i);
    }
    return ratio(worst) > VARIES * Sections.quantile(ratios, 0.5);
  }

  /** Middle area of steel, m². */
  double steel() {
    return Sections.quantile(areas, 0.5);
  }

  double steelAtWorst() {
    return areas[worst];
  }

  double contourAtWorst() {
    return contours[worst];
  }

  private int secondWorst() {
    int first = 0;
    for (int i = 1; i < areas.length; i++) {
      first = ratio(i) > ratio(first) ? i : first;
    }
    int second = first == 0 ? 1 : 0;
    for (int i = 0; i < areas.length; i++) {
      second = i != first && ratio(i) > ratio(second) ? i : second;
    }
    return second;
  }

  private double ratio(int i) {
    return areas[i] > 0 ? contours[i] / areas[i] : 0;
  }
}
