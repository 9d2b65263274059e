package org.coatrun.geometry.exposure;

import java.util.List;
import org.coatrun.geometry.solid.Face;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.geometry.solid.Solid;
import org.coatrun.shared.shape.Vec3;

/**
 * The direction that a solid runs in: the one that its faces turn away from least. Faces along a
 * prismatic member are square to its axis, so the axis is the eigenvector of Σ A n nᵀ with the
 * least eigenvalue; it does not depend on how the faces are cut up.
 */
final class Principal {

  private Principal() {}

  static Vec3 direction(List<Solid> solids) {
    double[] m = new double[6];
    for (Solid s : solids) {
      for (Face f : s.faces()) {
        Plane p = f.plane();
        double a = f.flatArea();
        m[0] += a * p.nx() * p.nx();
        m[1] += a * p.nx() * p.ny();
        m[2] += a * p.nx() * p.nz();
        m[3] += a * p.ny() * p.ny();
        m[4] += a * p.ny() * p.nz();
        m[5] += a * p.nz() * p.nz();
      }
    }
    return least(m);
  }

  /** Jacobi's rotations for a symmetric 3 × 3 matrix. */
  private static Vec3 least(double[] m) {
    double[][] a = {{m[0], m[1], m[2]}, {m[1], m[3], m[4]}, {m[2], m[4], m[5]}};
    double[][] v = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    for (int sweep = 0; sweep < 30; sweep++) {
      rotate(a, v, 0, 1);
      rotate(a, v, 0, 2);
      rotate(a, v, 1, 2);
    }
    int k = a[0][0] <= a[1][1] ? 0 : 1;
    k = a[2][2] < a[k][k] ? 2 : k;
    return positive(new Vec3(v[0][k], v[1][k], v[2][k]).unit());
  }

  private static void rotate(double[][] a, double[][] v, int p, int q) {
    if (Math.abs(a[p][q]) < 1e-300) {
      return;
    }
    double theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
    double t = Math.signum(theta) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
    t = theta == 0 ? 1 : t;
    double c = 1 / Math.sqrt(t * t + 1);
    double s = t * c;
    for (int k = 0; k < 3; k++) {
      double kp = a[k][p];
      double kq = a[k][q];
      a[k][p] = c * kp - s * kq;
      a[k][q] = s * kp + c * kq;
    }
    for (int k = 0; k < 3; k++) {
      double pk = a[p][k];
      double qk = a[q][k];
      a[p][k] = c * pk - s * qk;
      a[q][k] = s * pk + c * qk;
    }
    for (int k = 0; k < 3; k++) {
      double kp = v[k][p];
      double kq = v[k][q];
      v[k][p] = c * kp - s * kq;
      v[k][q] = s * kp + c * kq;
    }
  }

  private static Vec3 positive(Vec3 v) {
    double lead = Math.abs(v.z()) > 1e-9 ? v.z() : Math.abs(v.x()) > 1e-9 ? v.x() : v.y();
    return lead < 0 ? v.times(-1) : v;
  }
}
