package org.coatrun.ifcimport.shape;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.part21.Value;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Surface;
import org.coatrun.shared.shape.Vec3;

/** B-spline curves and surfaces; Bezier curves of the older schema become splines. */
final class Splines {

  private Splines() {}

  static Segment3.Spline curve(Entity curve, Axes axes) {
    int degree = (int) curve.needNumber("Degree");
    List<Vec3> poles = curve.needRefs("ControlPointsList").stream().map(axes::point).toList();
    List<Double> knots =
        curve.isA("IfcBSplineCurveWithKnots")
            ? knots(curve, "Knots", "KnotMultiplicities")
            : bezierKnots(curve, degree, poles.size());
    try {
      return new Segment3.Spline(degree, poles, curve.numbers("WeightsData"), knots);
    } catch (IllegalArgumentException e) {
      throw curve.broken("its poles, weights and knots do not match");
    }
  }

  static Surface surface(Entity surface, Axes axes) {
    int uDegree = (int) surface.needNumber("UDegree");
    int vDegree = (int) surface.needNumber("VDegree");
    var poles = new ArrayList<List<Vec3>>();
    for (Value row : surface.value("ControlPointsList").items()) {
      poles.add(
          row.items().stream()
              .map(
                  p ->
                      axes.point(
                          surface
                              .model()
                              .get(
                                  p.asRef()
                                      .orElseThrow(() -> surface.broken("a pole is missing")))))
              .toList());
    }
    var weights = new ArrayList<List<Double>>();
    for (Value row : surface.value("WeightsData").items()) {
      weights.add(surface.numbers(row, "WeightsData"));
    }
    List<Double> uKnots = knots(surface, "UKnots", "UMultiplicities");
    List<Double> vKnots = knots(surface, "VKnots", "VMultiplicities");
    if (uDegree < 1
        || vDegree < 1
        || poles.isEmpty()
        || uKnots.size() != poles.size() + uDegree + 1
        || vKnots.size() != poles.get(0).size() + vDegree + 1) {
      throw surface.broken("its poles and knots do not match");
    }
    return new Surface.Spline(uDegree, vDegree, poles, weights, uKnots, vKnots);
  }

  private static List<Double> knots(Entity of, String knots, String multiplicities) {
    List<Double> values = of.numbers(knots);
    List<Double> repeats = of.numbers(multiplicities);
    if (values.size() != repeats.size()) {
      throw of.broken("its knots and their multiplicities do not match");
    }
    var all = new ArrayList<Double>();
    for (int i = 0; i < values.size(); i++) {
      for (int k = 0; k < Math.min(repeats.get(i), 1000); k++) {
        all.add(values.get(i));
      }
    }
    return all;
  }

  /** Pieces of a Bezier curve, each of degree + 1 poles, the ends shared. */
  private static List<Double> bezierKnots(Entity curve, int degree, int poles) {
    if (degree < 1 || (poles - 1) % degree != 0) {
      throw curve.broken("its poles do not make whole Bezier pieces");
    }
    int pieces = (poles - 1) / degree;
    var all = new ArrayList<Double>();
    for (int i = 0; i <= pieces; i++) {
      int times = i == 0 || i == pieces ? degree + 1 : degree;
      for (int k = 0; k < times; k++) {
        all.add((double) i);
      }
    }
    return all;
  }
}
