package org.coatrun.geometry.view;

import java.util.Arrays;
import java.util.List;
import org.coatrun.geometry.exposure.CoveredPatch;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.shared.shape.Transform3;

/**
 * The surface of a form in facets, each plane and convex. In single precision: it is for pictures.
 *
 * @param points x, y, z of each corner, metres, facet after facet, the first corner not repeated
 * @param sizes how many corners each facet has
 * @param coated one a facet: whether it must be coated if the element must be
 */
public record Facets(float[] points, int[] sizes, boolean[] coated) {

  public Facets {
    int corners = 0;
    for (int size : sizes) {
      corners += size;
    }
    if (points.length != 3 * corners || coated.length != sizes.length) {
      throw new IllegalArgumentException("facets whose lists do not match");
    }
  }

  /** A form that was measured, in its own axes: what is covered is told from what is exposed. */
  static Facets of(Exposure exposure) {
    Gathering all = new Gathering();
    for (CoveredPatch p : exposure.patches()) {
      boolean side = p.use() == CoveredPatch.Use.SIDE;
      if (!side || p.rest().isEmpty()) {
        all.add(p.patch().plane(), p.patch().convexParts(), false);
      } else {
        all.add(p.patch().plane(), p.rest().convexLeft(), true);
        if (p.restArea() < p.patch().area() * (1 - 1e-9)) {
          all.add(p.patch().plane(), p.rest().convexTaken(), false);
        }
      }
    }
    return all.facets();
  }

  /** A form that only stands by. */
  static Facets of(Form form) {
    Gathering all = new Gathering();
    for (Patch p : form.boundary().patches()) {
      all.add(p.plane(), p.convexParts(), false);
    }
    return all.facets();
  }

  /** The same in other axes. */
  Facets mapped(Transform3 by) {
    if (by.equals(Transform3.IDENTITY)) {
      return this;
    }
    float[] mapped = new float[points.length];
    for (int i = 0; i < points.length; i += 3) {
      double u = points[i];
      double v = points[i + 1];
      double w = points[i + 2];
      mapped[i] = (float) (by.origin().x() + u * by.x().x() + v * by.y().x() + w * by.z().x());
      mapped[i + 1] = (float) (by.origin().y() + u * by.x().y() + v * by.y().y() + w * by.z().y());
      mapped[i + 2] = (float) (by.origin().z() + u * by.x().z() + v * by.y().z() + w * by.z().z());
    }
    return new Facets(mapped, sizes, coated);
  }

  /** Puts one after the other. */
  private static final class Gathering {

    private float[] points = new float[1 << 10];
    private int[] sizes = new int[1 << 7];
    private boolean[] coated = new boolean[1 << 7];
    private int length;
    private int count;

    /**
     * Adds convex rings of a plane.
     *
     * @param rings u and v in turn, on the axes of the plane
     */
    private void add(Plane plane, List<double[]> rings, boolean coat) {
      for (double[] ring : rings) {
        room(ring.length / 2);
        for (int i = 0; i < ring.length; i += 2) {
          points[length++] = (float) plane.x(ring[i], ring[i + 1]);
          points[length++] = (float) plane.y(ring[i], ring[i + 1]);
          points[length++] = (float) plane.z(ring[i], ring[i + 1]);
        }
        sizes[count] = ring.length / 2;
        coated[count++] = coat;
      }
    }

    private void room(int corners) {
      if (points.length < length + 3 * corners) {
        points = Arrays.copyOf(points, 2 * points.length + 3 * corners);
      }
      if (sizes.length == count) {
        sizes = Arrays.copyOf(sizes, 2 * count);
        coated = Arrays.copyOf(coated, 2 * count);
      }
    }

    private Facets facets() {
      return new Facets(
          Arrays.copyOf(points, length), Arrays.copyOf(sizes, count), Arrays.copyOf(coated, count));
    }
  }
}
