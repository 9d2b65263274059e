package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.profile.SplineBasis;
import org.coatrun.shared.shape.Surface;
import org.coatrun.shared.shape.Vec3;

/** A B-spline surface with its parameters stretched to about metres. */
final class SplineMap implements FaceMap {

  private static final int LINES_PER_SPAN = 8;
  private static final int SAMPLES = 24;
  private static final int ROUNDS = 30;
  private static final double ON = 1e-7;

  private final Surface.Spline s;
  private final SplineBasis u;
  private final SplineBasis v;
  private final double scaleU;
  private final double scaleV;

  SplineMap(Surface.Spline spline) {
    this.s = spline;
    this.u = new SplineBasis(spline.uDegree(), spline.uKnots());
    this.v = new SplineBasis(spline.vDegree(), spline.vKnots());
    this.scaleU = scale(true);
    this.scaleV = scale(false);
    if (!(scaleU > 0) || !(scaleV > 0)) {
      throw NotBuildableException.empty("B-spline face without an extent");
    }
  }

  private double scale(boolean alongU) {
    double a = alongU ? u.start() : v.start();
    double b = alongU ? u.end() : v.end();
    double other = alongU ? 0.5 * (v.start() + v.end()) : 0.5 * (u.start() + u.end());
    double sum = 0;
    for (int i = 0; i < SAMPLES; i++) {
      double t = a + (b - a) * i / SAMPLES;
      double next = a + (b - a) * (i + 1) / SAMPLES;
      Vec3 p = alongU ? point(t, other) : point(other, t);
      sum += p.distance(alongU ? point(next, other) : point(other, next));
    }
    return sum / (b - a);
  }

  private Vec3 point(double tu, double tv) {
    int su = u.span(tu);
    int sv = v.span(tv);
    double[] nu = u.values(su, tu);
    double[] nv = v.values(sv, tv);
    Vec3 sum = Vec3.ZERO;
    double weight = 0;
    for (int i = 0; i < nu.length; i++) {
      for (int j = 0; j < nv.length; j++) {
        int row = su - s.uDegree() + i;
        int column = sv - s.vDegree() + j;
        double w = nu[i] * nv[j];
        w *= s.weights().isEmpty() ? 1 : s.weights().get(row).get(column);
        sum = sum.plus(s.poles().get(row).get(column).times(w));
        weight += w;
      }
    }
    return sum.times(1 / weight);
  }

  @Override
  public Vec3 at(double uAt, double vAt) {
    return point(clamp(uAt / scaleU, u.start(), u.end()), clamp(vAt / scaleV, v.start(), v.end()));
  }

  private static double clamp(double t, double low, double high) {
    return Math.max(low, Math.min(high, t));
  }

  @Override
  public double[] of(Vec3 p, double[] near) {
    double[] from = near == null ? nearestSample(p) : near;
    double[] found = closest(p, from);
    if (near != null && at(found[0], found[1]).distance(p) > ON) {
      double[] again = closest(p, nearestSample(p));
      return at(again[0], again[1]).distance(p) < at(found[0], found[1]).distance(p)
          ? again
          : found;
    }
    return found;
  }

  private double[] nearestSample(Vec3 p) {
    double[] best = {0, 0};
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= SAMPLES; i++) {
      for (int j = 0; j <= SAMPLES; j++) {
        double a = scaleU * (u.start() + (u.end() - u.start()) * i / SAMPLES);
        double b = scaleV * (v.start() + (v.end() - v.start()) * j / SAMPLES);
        double d = at(a, b).distance(p);
        if (d < least) {
          least = d;
          best = new double[] {a, b};
        }
      }
    }
    return best;
  }

  /** Gauss-Newton on the distance, within the surface's bounds. */
  private double[] closest(Vec3 p, double[] from) {
    double a = from[0];
    double b = from[1];
    for (int i = 0; i < ROUNDS; i++) {
      Vec3 off = p.minus(at(a, b));
      Vec3 da = FaceArea.along(this, a, b, true);
      Vec3 db = FaceArea.along(this, a, b, false);
      double aa = da.dot(da);
      double bb = db.dot(db);
      double ab = da.dot(db);
      double det = aa * bb - ab * ab;
      if (!(Math.abs(det) > 1e-14 * aa * bb)) {
        break;
      }
      double stepA = (bb * da.dot(off) - ab * db.dot(off)) / det;
      double stepB = (aa * db.dot(off) - ab * da.dot(off)) / det;
      a = clamp(a + stepA, scaleU * u.start(), scaleU * u.end());
      b = clamp(b + stepB, scaleV * v.start(), scaleV * v.end());
      if (Math.abs(stepA) + Math.abs(stepB) < 1e-12) {
        break;
      }
    }
    return new double[] {a, b};
  }

  @Override
  public double period() {
    return 0;
  }

  @Override
  public List<Double> linesAcrossU(double from, double to) {
    return lines(u, scaleU, from, to);
  }

  @Override
  public List<Double> linesAcrossV(double from, double to) {
    return lines(v, scaleV, from, to);
  }

  private static List<Double> lines(SplineBasis basis, double scale, double from, double to) {
    var out = new ArrayList<Double>();
    double[] breaks = basis.breaks();
    for (int i = 0; i + 1 < breaks.length; i++) {
      for (int k = 0; k < LINES_PER_SPAN; k++) {
        double line = scale * (breaks[i] + (breaks[i + 1] - breaks[i]) * k / LINES_PER_SPAN);
        if (line > from && line < to) {
          out.add(line);
        }
      }
    }
    return out;
  }

  @Override
  public boolean unrolls() {
    return false;
  }
}
