package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Surface;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** A cylinder unrolled: u along its arc, v along its axis. */
final class CylinderMap implements FaceMap {

  private final Transform3 frame;
  private final Transform3 back;
  private final double radius;

  CylinderMap(Surface.Cylinder cylinder) {
    this.frame = cylinder.frame();
    this.back = frame.inverse();
    this.radius = cylinder.radius();
    if (!(radius > 0)) {
      throw NotBuildableException.empty("cylindrical face without a radius");
    }
  }

  @Override
  public Vec3 at(double u, double v) {
    double angle = u / radius;
    return frame.apply(new Vec3(radius * Math.cos(angle), radius * Math.sin(angle), v));
  }

  @Override
  public double[] of(Vec3 p, double[] near) {
    Vec3 local = back.apply(p);
    double u = radius * Math.atan2(local.y(), local.x());
    if (near != null) {
      u += period() * Math.round((near[0] - u) / period());
    }
    return new double[] {u, local.z()};
  }

  @Override
  public double period() {
    return 2 * Math.PI * radius;
  }

  @Override
  public List<Double> linesAcrossU(double from, double to) {
    double step = radius * Math.PI / 2 / Sweeps.PER_QUARTER;
    var out = new ArrayList<Double>();
    for (long k = (long) Math.ceil(from / step); k * step <= to; k++) {
      out.add(k * step);
    }
    return out;
  }

  @Override
  public List<Double> linesAcrossV(double from, double to) {
    return List.of();
  }

  @Override
  public boolean unrolls() {
    return true;
  }
}
