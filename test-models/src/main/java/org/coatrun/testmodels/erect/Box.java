package org.coatrun.testmodels.erect;

import java.util.OptionalDouble;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.shape.Frame;

/** A block along the building's axes, between two corners in metres. */
public record Box(double x0, double y0, double z0, double x1, double y1, double z1) {

  /** Returns the frame at the lower corner. */
  Frame frame() {
    return Frame.at(x0, y0, z0);
  }

  /** Returns the plan, seen from the lower corner. */
  Outline plan() {
    return Outline.box("plan", 0, 0, x1 - x0, y1 - y0);
  }

  double height() {
    return z1 - z0;
  }

  /** Returns this block as seen from the lower corner of another. */
  Box seenFrom(Box o) {
    return new Box(x0 - o.x0, y0 - o.y0, z0 - o.z0, x1 - o.x0, y1 - o.y0, z1 - o.z0);
  }

  OptionalDouble area() {
    Outline plan = plan();
    return OptionalDouble.of(2 * plan.area() + plan.perimeter() * height());
  }

  OptionalDouble volume() {
    return OptionalDouble.of(plan().area() * height());
  }
}
