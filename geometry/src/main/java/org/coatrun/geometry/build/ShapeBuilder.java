package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.Optional;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;

/**
 * Makes solids of any shape but booleans and half-spaces, which stay trees of originals.
 *
 * <p>Never throws for what a model may contain: what cannot be built comes back as a typed result.
 */
public final class ShapeBuilder {

  private ShapeBuilder() {}

  /**
   * The solids of a shape.
   *
   * @param at from the shape's axes to those asked for; any affine map that does not flatten space:
   *     areas are those of the mapped geometry
   */
  public static BuildResult build(Shape shape, Transform3 at) {
    try {
      return dispatch(shape, at);
    } catch (NotBuildableException e) {
      return e.result();
    } catch (IllegalArgumentException | ArithmeticException e) {
      return new BuildResult.NotBuilt(
          SurfaceFinding.NOT_MEASURED,
          shape.getClass().getSimpleName(),
          "A body could not be built: " + e.getMessage() + ".");
    }
  }

  static BuildResult.Built dispatch(Shape shape, Transform3 at) {
    if (shape instanceof Shape.Placed p) {
      return dispatch(p.of(), at.after(p.by()));
    }
    if (shape instanceof Shape.Extrusion s) {
      return Extrusions.build(s, at);
    }
    if (shape instanceof Shape.TaperedExtrusion s) {
      return Extrusions.build(s, at);
    }
    if (shape instanceof Shape.Revolution s) {
      return Revolutions.build(s, at);
    }
    if (shape instanceof Shape.TaperedRevolution s) {
      return Revolutions.build(s, at);
    }
    if (shape instanceof Shape.SweptDisk s) {
      return PathSweeps.build(s, at);
    }
    if (shape instanceof Shape.Sweep s) {
      return PathSweeps.build(s, at);
    }
    if (shape instanceof Shape.Sectioned s) {
      return SectionedSolids.build(s, at);
    }
    return unswept(shape, at);
  }

  private static BuildResult.Built unswept(Shape shape, Transform3 at) {
    if (shape instanceof Shape.Mesh s) {
      return Meshes.build(s, at);
    }
    if (shape instanceof Shape.Brep s) {
      return Breps.build(s, at);
    }
    if (shape instanceof Shape.Compound s) {
      return compound(s, at);
    }
    if (shape instanceof Shape.Block s) {
      return Primitives.block(s, at);
    }
    if (shape instanceof Shape.Cylinder s) {
      return Primitives.cylinder(s, at);
    }
    if (shape instanceof Shape.Cone s) {
      return Primitives.cone(s, at);
    }
    if (shape instanceof Shape.Sphere s) {
      return Primitives.sphere(s, at);
    }
    if (shape instanceof Shape.Pyramid s) {
      return Primitives.pyramid(s, at);
    }
    if (shape instanceof Shape.Endless e) {
      throw new NotBuildableException(
          SurfaceFinding.ENDLESS_BODY,
          "endless body",
          "The body cannot be read: " + e.detail() + ".");
    }
    if (shape instanceof Shape.Unsupported s) {
      throw NotBuildableException.unsupported(s);
    }
    throw NotBuildableException.notHandled(shape.getClass().getSimpleName());
  }

  /** Items side by side; the run is that of a single item. */
  private static BuildResult.Built compound(Shape.Compound compound, Transform3 at) {
    if (compound.items().isEmpty()) {
      throw NotBuildableException.empty("body without an item");
    }
    if (compound.items().size() == 1) {
      return dispatch(compound.items().get(0), at);
    }
    var parts = new ArrayList<Part>();
    var notes = new ArrayList<BuildResult.Note>();
    for (Shape item : compound.items()) {
      BuildResult.Built built = dispatch(item, at);
      parts.addAll(built.parts());
      notes.addAll(built.notes());
    }
    return new BuildResult.Built(parts, Optional.empty(), notes);
  }
}
