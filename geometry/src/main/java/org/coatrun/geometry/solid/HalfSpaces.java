package org.coatrun.geometry.solid;

import java.util.List;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/**
 * Half-spaces as solids that reach beyond their host. Only the plane itself ever cuts: all other
 * faces lie outside the host's box.
 */
public final class HalfSpaces {

  private HalfSpaces() {}

  /**
   * All space behind a plane, as far as {@code host} and well beyond.
   *
   * @param plane its normal points out of the filled side
   */
  public static Solid solid(Plane plane, Box host) {
    double reach = reach(host);
    double cu = plane.u(host.centreX(), host.centreY(), host.centreZ());
    double cv = plane.v(host.centreX(), host.centreY(), host.centreZ());
    double[] ring = {
      cu - reach, cv - reach, cu + reach, cv - reach, cu + reach, cv + reach, cu - reach, cv + reach
    };
    double height = plane.height(host.centreX(), host.centreY(), host.centreZ());
    double depth = Math.max(reach, reach - height);
    double[] top = new double[12];
    double[] bottom = new double[12];
    for (int i = 0; i < 4; i++) {
      double x = plane.x(ring[2 * i], ring[2 * i + 1]);
      double y = plane.y(ring[2 * i], ring[2 * i + 1]);
      double z = plane.z(ring[2 * i], ring[2 * i + 1]);
      put(top, i, x, y, z);
      put(bottom, i, x - depth * plane.nx(), y - depth * plane.ny(), z - depth * plane.nz());
    }
    return prism(bottom, top);
  }

  /**
   * The part of a half-space inside an endless prism, cut off well beyond the host.
   *
   * @param plane its normal points out of the filled side
   * @param frame the prism runs along its z axis
   * @param outline x, y of the prism's corners in the frame, counter-clockwise, no repeated last
   * @return a solid, or an intersection where the plane runs along the prism
   */
  public static SolidTree bounded(Plane plane, Transform3 frame, double[] outline, Box host) {
    double reach = reach(host) + frame.origin().length();
    Vec3 axis = frame.z().unit();
    double along = plane.along(axis);
    int n = outline.length / 2;
    double[] low = new double[3 * n];
    double[] high = new double[3 * n];
    boolean slanted = Math.abs(along) > 1e-3;
    double far = far(frame, host, reach);
    for (int i = 0; i < n; i++) {
      Vec3 p = frame.apply(new Vec3(outline[2 * i], outline[2 * i + 1], 0));
      double meet = slanted ? -plane.height(p.x(), p.y(), p.z()) / along : far;
      double a = slanted && along < 0 ? meet : -far;
      double b = slanted && along < 0 ? Math.max(far, meet + far) : meet;
      if (slanted && along > 0) {
        a = Math.min(-far, meet - far);
      }
      put(low, i, p.x() + a * axis.x(), p.y() + a * axis.y(), p.z() + a * axis.z());
      put(high, i, p.x() + b * axis.x(), p.y() + b * axis.y(), p.z() + b * axis.z());
    }
    Solid prism = prism(low, high);
    if (slanted) {
      return SolidTree.of(prism);
    }
    return new SolidTree.Intersection(
        List.of(SolidTree.of(prism), SolidTree.of(solid(plane, prism.bounds()))));
  }

  private static double far(Transform3 frame, Box host, double reach) {
    double dx = host.centreX() - frame.origin().x();
    double dy = host.centreY() - frame.origin().y();
    double dz = host.centreZ() - frame.origin().z();
    return reach + Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  private static double reach(Box host) {
    return 2 * host.diagonal() + 1;
  }

  private static void put(double[] table, int i, double x, double y, double z) {
    table[3 * i] = x;
    table[3 * i + 1] = y;
    table[3 * i + 2] = z;
  }

  /** The solid between two rings of the same number of corners. */
  private static Solid prism(double[] low, double[] high) {
    SolidBuilder builder = new SolidBuilder();
    int n = low.length / 3;
    int[] bottom = new int[n];
    int[] top = new int[n];
    for (int i = 0; i < n; i++) {
      bottom[i] = builder.vertex(low[3 * i], low[3 * i + 1], low[3 * i + 2]);
    }
    for (int i = 0; i < n; i++) {
      top[i] = builder.vertex(high[3 * i], high[3 * i + 1], high[3 * i + 2]);
    }
    builder.face(FaceLabel.CUT, 1, Solids.backwards(bottom));
    builder.face(FaceLabel.CUT, 1, top);
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      builder.face(FaceLabel.CUT, 1, new int[] {bottom[i], bottom[j], top[j], top[i]});
    }
    return builder.build();
  }
}
