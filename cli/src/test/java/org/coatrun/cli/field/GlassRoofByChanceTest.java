package org.coatrun.cli.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coatrun.geometry.surface.Progress;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.Surfaces;
import org.junit.jupiter.api.Test;

/**
 * What six tubes that run into each other leave of each: points thrown onto the sides of a roof's
 * tubes, each asked whether it lies within the outside of any other, against the areas that cuts
 * leave. Faces in contact, which no point sees, are a little less.
 */
class GlassRoofByChanceTest {

  private static final double HALF_WIDTH = 0.05;
  private static final double HALF_DEPTH = 0.1;
  private static final int MEMBERS = 60;
  private static final int POINTS = 10_000;

  /** A tube by its frame, its axis along z. */
  private record Tube(Transform3 frame, Transform3 into, double length) {

    static Tube of(Member member) {
      Shape.Extrusion e = (Shape.Extrusion) member.body().shape();
      Transform3 frame = member.body().placement().after(e.position());
      return new Tube(frame, frame.inverse(), e.depth());
    }

    Vec3 middle() {
      return frame.apply(new Vec3(0, 0, length / 2));
    }

    boolean isNear(Tube other) {
      double reach = 0.5 * (length + other.length) + 0.3;
      return middle().minus(other.middle()).length() < reach;
    }

    boolean holds(Vec3 point) {
      Vec3 p = into.apply(point);
      return Math.abs(p.x()) < HALF_WIDTH
          && Math.abs(p.y()) < HALF_DEPTH
          && p.z() > 0
          && p.z() < length;
    }

    /** A point on its four outer sides. */
    Vec3 onSide(Random random) {
      double along = random.nextDouble() * 2 * (HALF_WIDTH + HALF_DEPTH);
      double sign = random.nextBoolean() ? 1 : -1;
      double z = random.nextDouble() * length;
      return frame.apply(
          along < 2 * HALF_WIDTH
              ? new Vec3(along - HALF_WIDTH, sign * HALF_DEPTH, z)
              : new Vec3(sign * HALF_WIDTH, along - 2 * HALF_WIDTH - HALF_DEPTH, z));
    }
  }

  @Test
  void exposedAreasAreThoseThatPointsFind() throws IOException {
    Path file = FieldFiles.of("models/glass-roof-5178-members.2x3.ifc");
    Building building =
        IfcImport.read(List.of(file), ImportOptions.DEFAULT, ProgressListener.silent());
    Surfaces surfaces =
        SurfaceTakeoff.measure(building, SurfaceOptions.defaults(), Progress.silent());
    List<Tube> tubes = building.members().stream().map(Tube::of).toList();
    Random random = new Random(5);
    double found = 0;
    double measured = 0;
    for (int k = 0; k < MEMBERS; k++) {
      int i = random.nextInt(tubes.size());
      Tube tube = tubes.get(i);
      double side = 4 * (HALF_WIDTH + HALF_DEPTH) * tube.length();
      double share = shareFree(tube, tubes, random);
      double deviation = side * Math.sqrt(share * (1 - share) / POINTS);
      double exposed = exposed(surfaces, building.members().get(i));
      assertThat(exposed).isCloseTo(side * share, within(5 * deviation + 0.005));
      assertThat(share).as("something covers it").isLessThan(0.99);
      found += side * share;
      measured += exposed;
    }
    assertThat(measured).isCloseTo(found, within(0.002 * found));
  }

  private static double shareFree(Tube tube, List<Tube> tubes, Random random) {
    List<Tube> near = new ArrayList<>();
    for (Tube other : tubes) {
      if (!other.equals(tube) && other.isNear(tube)) {
        near.add(other);
      }
    }
    int free = 0;
    for (int n = 0; n < POINTS; n++) {
      Vec3 point = tube.onSide(random);
      free += near.stream().noneMatch(t -> t.holds(point)) ? 1 : 0;
    }
    return (double) free / POINTS;
  }

  private static double exposed(Surfaces surfaces, Member member) {
    Measurement m = surfaces.measurements().get(member.id());
    return ((Measurement.Measured) m).ledger().exposed().squareMetres();
  }
}
