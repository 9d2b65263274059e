package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.geometry.build.BuildResult;
import org.coatrun.geometry.build.Run;
import org.coatrun.geometry.exposure.Axis;
import org.coatrun.geometry.exposure.BodyTree;
import org.coatrun.geometry.exposure.SmallHoles;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.solid.Boundary;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.geometry.solid.SolidTree;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Opening;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.geom.TopologyException;

/** Makes a body with its openings taken out, ready to be covered and to cover. */
final class Things {

  /** A body, or why there is none. */
  sealed interface Result {

    /**
     * Made.
     *
     * @param volume of the steel, m³
     */
    record Made(
        Element element,
        Thing thing,
        double volume,
        double gape,
        boolean closed,
        boolean cut,
        Optional<Run> run,
        List<BuildResult.Note> notes)
        implements Result {}

    /** Not made. */
    record Failed(Element element, SurfaceFinding code, String kind, String sentence)
        implements Result {}
  }

  private final double mouth;

  Things(double mouth) {
    this.mouth = mouth;
  }

  Result of(Element element, List<Opening> openings, Kernel kernel) {
    try {
      return made(element, openings, kernel);
    } catch (IllegalArgumentException | ArithmeticException | TopologyException e) {
      return new Result.Failed(
          element,
          SurfaceFinding.NOT_MEASURED,
          "body",
          "Its body could not be worked out: " + e.getMessage() + ".");
    }
  }

  private Result made(Element element, List<Opening> openings, Kernel kernel) {
    if (!element.body().isPresent()) {
      return new Result.Failed(element, SurfaceFinding.NO_BODY, "body", "It has no body.");
    }
    BodyTree.Result result = BodyTree.of(element.body().shape(), element.body().placement());
    if (result instanceof BodyTree.Result.Failed f) {
      return new Result.Failed(element, f.code(), f.kind(), f.sentence());
    }
    BodyTree.Result.Made made = (BodyTree.Result.Made) result;
    List<BuildResult.Note> notes = new ArrayList<>(made.notes());
    Openings cut = Openings.of(made.tree(), openings);
    notes.addAll(cut.notes());
    SolidTree tree = cut.tree();
    Originals all = Originals.of(tree, kernel.tolerance());
    Boundary full = Boundary.of(all, kernel);
    if (!(full.area() > 0)) {
      return new Result.Failed(
          element, SurfaceFinding.EMPTY_BODY, "body", "Its body has no surface.");
    }
    notes.addAll(cut.idle(all, full));
    SolidTree plain = SmallHoles.without(tree, mouth, kernel);
    boolean same = plain.equals(tree);
    Originals originals = same ? all : Originals.of(plain, kernel.tolerance());
    Boundary boundary = same ? full : Boundary.of(originals, kernel);
    Thing thing =
        new Thing(
            element.id(),
            originals,
            boundary,
            same ? 0 : full.area() - boundary.area(),
            axis(element, made, originals, boundary),
            element instanceof Deck);
    boolean closed = all.closed();
    double volume = closed ? Math.max(0, full.volume()) * made.fullness() : 0;
    return new Result.Made(
        element,
        thing,
        volume,
        full.gape(),
        closed,
        made.cut() || !openings.isEmpty(),
        made.run(),
        List.copyOf(notes));
  }

  private static Optional<Axis> axis(
      Element element, BodyTree.Result.Made made, Originals originals, Boundary boundary) {
    if (element instanceof Member m && m.role() == Role.PLATE) {
      return Optional.empty();
    }
    if (made.run().isPresent()) {
      Run run = made.run().get();
      Vec3 way = run.to().minus(run.from());
      double least = Math.min(run.start().bounds().width(), run.start().bounds().height());
      return run.length() < 0.5 * least || !(way.length() > 0)
          ? Optional.empty()
          : Optional.of(Axis.ofSweep(way, boundary));
    }
    return element instanceof Member
        ? Optional.of(Axis.along(Axis.principal(originals.leaves()), boundary))
        : Optional.empty();
  }
}
