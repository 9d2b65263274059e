package org.coatrun.geometry.build;

import java.util.List;
import org.coatrun.geometry.exposure.BodyTree;
import org.coatrun.geometry.solid.Boundary;
import org.coatrun.geometry.solid.Face;
import org.coatrun.geometry.solid.FaceLabel;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.geometry.solid.Solid;
import org.coatrun.geometry.solid.SolidTree;
import org.coatrun.geometry.solid.Tolerance;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;

/** Builds shapes in tests and adds up what came of them. */
final class Building {

  private Building() {}

  static BuildResult.Built built(Shape shape, Transform3 at) {
    BuildResult result = ShapeBuilder.build(shape, at);
    if (result instanceof BuildResult.Built b) {
      return b;
    }
    return combined(shape, at);
  }

  /** Booleans, as the tree that they stay. */
  private static BuildResult.Built combined(Shape shape, Transform3 at) {
    BodyTree.Result result = BodyTree.of(shape, at);
    if (result instanceof BodyTree.Result.Made m) {
      return new BuildResult.Built(List.of(new Part(m.tree(), m.fullness())), m.run(), m.notes());
    }
    throw new AssertionError("not built: " + result);
  }

  static BuildResult.Built built(Shape shape) {
    return built(shape, Transform3.IDENTITY);
  }

  static double area(BuildResult.Built built) {
    return built.parts().stream().mapToDouble(p -> area(p.tree())).sum();
  }

  static double volume(BuildResult.Built built) {
    return built.parts().stream().mapToDouble(p -> p.fullness() * volume(p.tree())).sum();
  }

  static double area(BuildResult.Built built, FaceLabel.Kind kind) {
    double sum = 0;
    for (Part part : built.parts()) {
      for (Face f : ((SolidTree.Leaf) part.tree()).solid().faces()) {
        sum += f.label().kind() == kind ? f.area() : 0;
      }
    }
    return sum;
  }

  static boolean closed(BuildResult.Built built) {
    return built.parts().stream().allMatch(p -> Originals.of(p.tree(), Tolerance.DEFAULT).closed());
  }

  private static double area(SolidTree tree) {
    return tree instanceof SolidTree.Leaf l ? l.solid().area() : boundary(tree).area();
  }

  private static double volume(SolidTree tree) {
    if (tree instanceof SolidTree.Leaf l) {
      Solid solid = l.solid();
      return solid.volume();
    }
    return boundary(tree).volume();
  }

  private static Boundary boundary(SolidTree tree) {
    return Boundary.of(Originals.of(tree, Tolerance.DEFAULT), new Kernel(Tolerance.DEFAULT));
  }
}
