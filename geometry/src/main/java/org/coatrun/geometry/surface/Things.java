package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.coatrun.geometry.build.BuildResult;
import org.coatrun.geometry.build.Run;
import org.coatrun.geometry.exposure.Axis;
import org.coatrun.geometry.exposure.BodyTree;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.exposure.SmallHoles;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.frame.FramePiece;
import org.coatrun.geometry.solid.Boundary;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.geometry.solid.SolidTree;
import org.coatrun.geometry.view.Drawing;
import org.coatrun.geometry.view.ElementMesh;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.Opening;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.geom.TopologyException;

/**
 * Makes bodies with their openings taken out, ready to be covered and to cover. What is alike is
 * made once, in axes of its own, so that a form does not depend on which body came first. May be
 * asked by several threads.
 */
final class Things {

  /** A shape drawn further from its own origin than this gets an origin among its points. */
  private static final double FAR_M = 1000;

  /** A body, or why there is none. */
  sealed interface Result {

    Element element();

    /**
     * Made.
     *
     * @param placement of its body in the building
     */
    record Made(
        Element element,
        Transform3 placement,
        Thing thing,
        Formed.Made formed,
        List<BuildResult.Note> notes)
        implements Result {

      /** The picture of its form where it stands. */
      ElementMesh mesh(Drawing drawn) {
        return ElementMesh.of(element.id(), placement, drawn, thing.at());
      }
    }

    /** Not made. */
    record Failed(Element element, SurfaceFinding code, String kind, String sentence)
        implements Result {}
  }

  private final double mouth;
  private final Map<Likeness, Formed> known = new ConcurrentHashMap<>();
  private final Map<Object, Vec3> anchors = new ConcurrentHashMap<>();

  Things(double mouth) {
    this.mouth = mouth;
  }

  Result of(Element element, List<Opening> openings, Kernel kernel) {
    if (!element.body().isPresent()) {
      String name = element.identity().name();
      String who = name.isBlank() ? "The element" : "'" + name + "'";
      return new Result.Failed(element, SurfaceFinding.NO_BODY, "body", who + " has no body.");
    }
    Transform3 placement = element.body().placement();
    Object look = Likeness.look(element.body());
    Read read = new Read(element.body());
    Vec3 own = origin(look, read, placement);
    Vec3 at = placement.origin().plus(own);
    Likeness like =
        new Likeness(
            Likeness.Kind.of(element),
            look,
            placement.about(own.times(-1)),
            openings.stream().map(o -> hole(o, at)).toList());
    Formed formed = known.get(like);
    if (formed == null) {
      Formed made = formed(like, read.shape(), openings, kernel);
      // what is amiss with a shape may name records of its own
      Formed first = made instanceof Formed.Made ? known.putIfAbsent(like, made) : null;
      formed = first == null ? made : first;
    }
    if (formed instanceof Formed.Failed f) {
      return new Result.Failed(element, f.code(), f.kind(), f.sentence());
    }
    Formed.Made made = (Formed.Made) formed;
    return new Result.Made(
        element, placement, new Thing(element.id(), made.form(), at), made, notes(made, openings));
  }

  /** A body whose shape is read once at most. */
  private static final class Read {
    private final Body body;
    private Shape shape;

    private Read(Body body) {
      this.body = body;
    }

    private Shape shape() {
      if (shape == null) {
        shape = body.shape();
      }
      return shape;
    }
  }

  /** Where the form's origin is from the placement's, in the world's axes. */
  private Vec3 origin(Object look, Read body, Transform3 placement) {
    Vec3 anchor = anchors.get(look);
    if (anchor == null) {
      anchor = Anchors.of(body.shape());
      anchors.put(look, anchor);
    }
    Vec3 from = placement.applyVector(anchor);
    return from.length() > FAR_M ? from : Vec3.ZERO;
  }

  private static Likeness.Hole hole(Opening opening, Vec3 host) {
    Transform3 placed = opening.body().placement();
    return new Likeness.Hole(
        Likeness.look(opening.body()), placed.about(Spacing.between(host, placed.origin())));
  }

  private static List<BuildResult.Note> notes(Formed.Made made, List<Opening> openings) {
    if (made.faults().isEmpty()) {
      return made.notes();
    }
    var notes = new ArrayList<BuildResult.Note>(made.notes());
    for (Openings.Fault f : made.faults()) {
      long step = openings.get(f.opening()).id().step();
      notes.add(new BuildResult.Note(f.code(), "The opening #" + step + " " + f.words()));
    }
    return notes;
  }

  private Formed formed(Likeness like, Shape shape, List<Opening> openings, Kernel kernel) {
    try {
      return made(like, shape, openings, kernel);
    } catch (IllegalArgumentException | ArithmeticException | TopologyException e) {
      return new Formed.Failed(
          SurfaceFinding.NOT_MEASURED,
          "body",
          "Its body could not be worked out: " + e.getMessage() + ".");
    }
  }

  private Formed made(Likeness like, Shape shape, List<Opening> openings, Kernel kernel) {
    BodyTree.Result result = BodyTree.of(shape, like.turned());
    if (result instanceof BodyTree.Result.Failed f) {
      return new Formed.Failed(f.code(), f.kind(), f.sentence());
    }
    BodyTree.Result.Made made = (BodyTree.Result.Made) result;
    Openings cut = Openings.of(made.tree(), openings, like.openings());
    SolidTree tree = cut.tree();
    Originals all = Originals.of(tree, kernel.tolerance());
    Boundary full = Boundary.of(all, kernel);
    if (!(full.area() > 0)) {
      return new Formed.Failed(SurfaceFinding.EMPTY_BODY, "body", "Its body has no surface.");
    }
    var faults = new ArrayList<>(cut.unbuilt());
    faults.addAll(cut.idle(all, full));
    SolidTree plain = SmallHoles.without(tree, mouth, kernel);
    boolean same = Objects.equals(plain, tree);
    Originals originals = same ? all : Originals.of(plain, kernel.tolerance());
    Boundary boundary = same ? full : Boundary.of(originals, kernel);
    Form bare =
        new Form(
            originals,
            boundary,
            same ? 0 : full.area() - boundary.area(),
            axis(like.kind(), made, originals, boundary),
            like.kind() == Likeness.Kind.DECK);
    Form form = like.kind() == Likeness.Kind.MEMBER ? bare.enclosing() : bare;
    boolean closed = all.closed();
    return new Formed.Made(
        form,
        closed ? Math.max(0, full.volume()) * made.fullness() : 0,
        full.gape(),
        closed,
        made.cut() || !like.openings().isEmpty(),
        made.run(),
        FramePiece.box(form),
        made.notes(),
        faults);
  }

  private static Optional<Axis> axis(
      Likeness.Kind kind, BodyTree.Result.Made made, Originals originals, Boundary boundary) {
    if (kind == Likeness.Kind.PLATE) {
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
    return kind == Likeness.Kind.MEMBER
        ? Optional.of(Axis.along(Axis.principal(originals.leaves()), boundary))
        : Optional.empty();
  }
}
