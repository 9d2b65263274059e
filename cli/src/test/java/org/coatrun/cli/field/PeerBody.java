package org.coatrun.cli.field;

import java.util.List;
import java.util.Optional;
import org.coatrun.geometry.exposure.BodyTree;
import org.coatrun.geometry.solid.Boundary;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.geometry.solid.SolidTree;
import org.coatrun.geometry.solid.Tolerance;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.Opening;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;

/** A body measured by this program, with its openings taken out, and held against the peer. */
record PeerBody(Element element, List<Opening> openings) {

  private static final double NEAR = 0.005;
  private static final Kernel KERNEL = new Kernel(Tolerance.DEFAULT);

  /** Area in m² and volume in m³. */
  private record Size(double area, double volume) {

    Size plus(Size o) {
      return new Size(area + o.area, volume + o.volume);
    }

    boolean agrees(PeerFigures there) {
      return near(area, there.area()) && near(volume, there.volume());
    }
  }

  /** Why the two differ. */
  enum Cause {
    /** They do not. */
    NONE,
    /** The peer's faces do not close, so that they enclose nothing that could be compared. */
    OPEN_THERE,
    /** Parts of one body touch, and the peer counts the faces between them. */
    INNER_FACES_THERE,
    /** The peer draws the section or the bend otherwise; drawn its way, the two agree. */
    DRAWN_OTHERWISE_THERE,
    /** This program does not build the body. */
    NOT_BUILT_HERE,
    /** None of these. */
    UNKNOWN
  }

  /** Decided by measuring, never by a list. */
  Cause against(PeerFigures there) {
    Shape shape = element.body().shape();
    Optional<Size> here = size(shape);
    if (here.isEmpty()) {
      return Cause.NOT_BUILT_HERE;
    }
    if (here.get().agrees(there)) {
      return Cause.NONE;
    }
    if (there.isOpen()) {
      return Cause.OPEN_THERE;
    }
    if (shape instanceof Shape.Compound c && apart(c).filter(s -> s.agrees(there)).isPresent()) {
      return Cause.INNER_FACES_THERE;
    }
    return size(PeerDrawing.of(shape)).filter(s -> s.agrees(there)).isPresent()
        ? Cause.DRAWN_OTHERWISE_THERE
        : Cause.UNKNOWN;
  }

  private Optional<Size> apart(Shape.Compound whole) {
    return whole.items().stream()
        .map(this::size)
        .reduce((a, b) -> a.flatMap(x -> b.map(x::plus)))
        .orElse(Optional.empty());
  }

  private Optional<Size> size(Shape shape) {
    if (!(tree(shape, element.body().placement()) instanceof BodyTree.Result.Made made)) {
      return Optional.empty();
    }
    SolidTree tree = made.tree();
    for (Opening o : openings) {
      if (tree(o.body().shape(), o.body().placement()) instanceof BodyTree.Result.Made hole) {
        tree = SolidTree.less(tree, hole.tree());
      }
    }
    Boundary boundary = Boundary.of(Originals.of(tree, KERNEL.tolerance()), KERNEL);
    return Optional.of(new Size(boundary.area(), boundary.volume() * made.fullness()));
  }

  private static BodyTree.Result tree(Shape shape, Transform3 at) {
    return BodyTree.of(shape, at);
  }

  private static boolean near(double here, double there) {
    return Math.abs(here - there) <= NEAR * there;
  }
}
