package org.coatrun.geometry.deck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.SoffitMeasure;
import org.coatrun.shared.units.Area;

/**
 * What of a deck looks down, and whether it has flutes and which way they run.
 *
 * <p>Flutes are drawn where a tenth of the flat soffit or more lies higher than its lowest part,
 * and faces that stand or lean make up a tenth of the plan or more. They run square to the way that
 * those faces look.
 *
 * @param patches that look down
 * @param down the way that the soffit looks on the whole, a unit vector
 * @param flutes the way that flutes run, a unit vector; empty where none are drawn
 */
record Soffit(List<Patch> patches, Vec3 down, double plan, double drawn, Optional<Vec3> flutes) {

  private static final double LOOKS_DOWN = -1e-3;
  private static final double LEVEL = 0.99;
  private static final double LEANS = 0.95;
  private static final double HIGHER = 0.005;
  private static final double TENTH = 0.1;

  static Soffit of(Form deck) {
    List<Patch> all = deck.boundary().patches();
    List<Patch> looking = new ArrayList<>();
    Vec3 sum = new Vec3(0, 0, -1e-12);
    double drawn = 0;
    for (Patch p : all) {
      if (p.plane().nz() < LOOKS_DOWN) {
        looking.add(p);
        sum = sum.plus(normal(p).times(p.flatArea()));
        drawn += p.area();
      }
    }
    Vec3 down = sum.unit();
    double plan = sum.length();
    boolean fluted = isStepped(looking, down) && leaning(all, down) > TENTH * plan;
    return new Soffit(
        List.copyOf(looking), down, plan, drawn, fluted ? along(all, down) : Optional.empty());
  }

  /** The same as a measure. */
  SoffitMeasure measure() {
    return new SoffitMeasure(
        Area.ofSquareMetres(plan), Area.ofSquareMetres(drawn), flutes.isPresent());
  }

  private static boolean isStepped(List<Patch> looking, Vec3 down) {
    double lowest = Double.NEGATIVE_INFINITY;
    for (Patch p : looking) {
      lowest = isLevel(p, down) ? Math.max(lowest, depth(p, down)) : lowest;
    }
    double flat = 0;
    double higher = 0;
    for (Patch p : looking) {
      if (isLevel(p, down)) {
        flat += p.flatArea();
        higher += depth(p, down) < lowest - HIGHER ? p.flatArea() : 0;
      }
    }
    return higher > TENTH * flat;
  }

  private static double leaning(List<Patch> all, Vec3 down) {
    double sum = 0;
    for (Patch p : all) {
      sum += Math.abs(normal(p).dot(down)) < LEANS ? p.flatArea() : 0;
    }
    return sum;
  }

  /** Square to the way that leaning faces look most; empty where they look every way alike. */
  private static Optional<Vec3> along(List<Patch> all, Vec3 down) {
    Vec3 e = down.anyPerpendicular();
    Vec3 f = down.cross(e);
    double ee = 0;
    double ff = 0;
    double ef = 0;
    for (Patch p : all) {
      Vec3 n = normal(p);
      if (Math.abs(n.dot(down)) < LEANS) {
        double a = n.dot(e);
        double b = n.dot(f);
        ee += p.flatArea() * a * a;
        ff += p.flatArea() * b * b;
        ef += p.flatArea() * a * b;
      }
    }
    double half = Math.hypot(0.5 * (ee - ff), ef);
    if (half < 0.25 * (ee + ff)) {
      return Optional.empty();
    }
    double angle = 0.5 * Math.atan2(2 * ef, ee - ff);
    return Optional.of(f.times(Math.cos(angle)).minus(e.times(Math.sin(angle))));
  }

  private static boolean isLevel(Patch p, Vec3 down) {
    return normal(p).dot(down) > LEVEL;
  }

  /** How far down a patch lies. */
  private static double depth(Patch p, Vec3 down) {
    double[] c = p.corners();
    return down.x() * c[0] + down.y() * c[1] + down.z() * c[2];
  }

  private static Vec3 normal(Patch p) {
    Plane q = p.plane();
    return new Vec3(q.nx(), q.ny(), q.nz());
  }
}
