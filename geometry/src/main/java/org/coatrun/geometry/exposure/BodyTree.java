package org.coatrun.geometry.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coatrun.geometry.build.BuildResult;
import org.coatrun.geometry.build.Part;
import org.coatrun.geometry.build.Run;
import org.coatrun.geometry.build.ShapeBuilder;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.SolidTree;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;

/**
 * Turns a shape into a tree of originals: booleans stay a tree, all else becomes solids.
 *
 * <p>Never throws for what a model may contain.
 */
public final class BodyTree {

  /** What came of it. */
  public sealed interface Result {

    /**
     * Made.
     *
     * @param fullness true volume over flat volume of the first original
     * @param run how the section is carried along, where one sweep is all there is or is the host
     *     of all cuts
     * @param cut whether anything is cut off or joined on
     */
    record Made(
        SolidTree tree,
        double fullness,
        Optional<Run> run,
        boolean cut,
        List<BuildResult.Note> notes)
        implements Result {
      public Made {
        notes = List.copyOf(notes);
      }
    }

    /** Not made, and why. */
    record Failed(SurfaceFinding code, String kind, String sentence) implements Result {}
  }

  /** A tree deeper than this is no building element. */
  private static final int DEEPEST = 2000;

  /** No body of a building is as wide; numbers lose their sense far beyond. */
  private static final double WIDEST_M = 1e6;

  private final List<BuildResult.Note> notes = new ArrayList<>();
  private Optional<Run> run = Optional.empty();
  private double fullness = 1;
  private boolean first = true;
  private boolean cut;

  private BodyTree() {}

  /** The tree of a shape, carried by {@code at} to the axes asked for. */
  public static Result of(Shape shape, Transform3 at) {
    BodyTree maker = new BodyTree();
    try {
      SolidTree tree = maker.make(shape, at, Box.EMPTY, 0);
      requirePossible(tree.bounds());
      return new Result.Made(tree, maker.fullness, maker.run, maker.cut, maker.notes);
    } catch (NoTreeException e) {
      return e.failed();
    } catch (IllegalArgumentException | ArithmeticException e) {
      return new Result.Failed(
          SurfaceFinding.NOT_MEASURED,
          shape.getClass().getSimpleName(),
          "A body could not be built: " + e.getMessage() + ".");
    }
  }

  private static void requirePossible(Box bounds) {
    double across =
        Math.max(
            Math.max(bounds.maxX() - bounds.minX(), bounds.maxY() - bounds.minY()),
            bounds.maxZ() - bounds.minZ());
    if (across > WIDEST_M) {
      throw new NoTreeException(
          SurfaceFinding.NOT_MEASURED,
          "body",
          String.format(Locale.ROOT, "Its body is %.3g km across.", across / 1000));
    }
  }

  private SolidTree make(Shape shape, Transform3 at, Box host, int depth) {
    if (depth > DEEPEST) {
      throw new NoTreeException(
          SurfaceFinding.NOT_MEASURED, "boolean result", "Its booleans are nested too deep.");
    }
    if (shape instanceof Shape.Placed p) {
      return make(p.of(), at.after(p.by()), host, depth + 1);
    }
    if (shape instanceof Shape.Combination c) {
      return combined(c, at, host, depth);
    }
    if (shape instanceof Shape.Compound c) {
      return compound(c, at, host, depth);
    }
    if (shape instanceof Shape.HalfSpace h) {
      if (host.isEmpty()) {
        throw new NoTreeException(
            SurfaceFinding.NOT_MEASURED, "half-space", "A half-space alone is no body.");
      }
      return HalfSpaceTrees.of(h, at, host);
    }
    return simple(shape, at);
  }

  private SolidTree simple(Shape shape, Transform3 at) {
    BuildResult result = ShapeBuilder.build(shape, at);
    if (result instanceof BuildResult.NotBuilt n) {
      throw new NoTreeException(n.code(), n.kind(), n.sentence());
    }
    BuildResult.Built built = (BuildResult.Built) result;
    notes.addAll(built.notes());
    if (first) {
      first = false;
      run = built.run();
      fullness = fullness(built.parts());
    }
    List<SolidTree> leaves = new ArrayList<>();
    for (Part part : built.parts()) {
      leaves.add(part.tree());
    }
    return joined(leaves);
  }

  private static double fullness(List<Part> parts) {
    double flat = 0;
    double full = 0;
    for (Part part : parts) {
      if (!(part.tree() instanceof SolidTree.Leaf leaf)) {
        return part.fullness();
      }
      double volume = leaf.solid().closed() ? leaf.solid().volume() : 0;
      flat += volume;
      full += volume * part.fullness();
    }
    return flat > 0 ? full / flat : 1;
  }

  private SolidTree joined(List<SolidTree> parts) {
    return parts.size() == 1 ? parts.get(0) : new SolidTree.Union(parts);
  }

  private SolidTree compound(Shape.Compound c, Transform3 at, Box host, int depth) {
    List<SolidTree> parts = new ArrayList<>();
    for (Shape item : c.items()) {
      parts.add(make(item, at, host, depth + 1));
    }
    if (parts.isEmpty()) {
      throw new NoTreeException(SurfaceFinding.EMPTY_BODY, "body", "Its body has no surface.");
    }
    if (parts.size() > 1) {
      run = Optional.empty();
      cut = true;
    }
    return joined(parts);
  }

  private SolidTree combined(Shape.Combination given, Transform3 at, Box host, int depth) {
    Shape.Combination c = bodyFirst(given);
    SolidTree a = make(c.first(), at, host, depth + 1);
    cut = true;
    Box box = host.isEmpty() ? a.bounds() : host.plus(a.bounds());
    SolidTree b = make(c.second(), at, box, depth + 1);
    return switch (c.operator()) {
      case DIFFERENCE -> SolidTree.less(a, b);
      case UNION -> {
        run = Optional.empty();
        yield new SolidTree.Union(List.of(a, b));
      }
      case INTERSECTION -> new SolidTree.Intersection(List.of(a, b));
    };
  }

  /** An intersection that begins with a half-space, the other way round: only a body has a box. */
  private static Shape.Combination bodyFirst(Shape.Combination c) {
    return c.operator() == Shape.Operator.INTERSECTION && isHalfSpace(c.first())
        ? new Shape.Combination(c.operator(), /* first= */ c.second(), /* second= */ c.first())
        : c;
  }

  private static boolean isHalfSpace(Shape shape) {
    return shape instanceof Shape.HalfSpace
        || (shape instanceof Shape.Placed p && isHalfSpace(p.of()));
  }
}
