package org.coatrun.geometry.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.shape.Vec3;

/** A few pieces of steel by their end points, for tests. */
final class Steel {

  final List<FramePiece> pieces = new ArrayList<>();

  /** A bar of square section between two points. */
  Steel bar(String label, Role role, Vec3 from, Vec3 to, double side) {
    Vec3 along = to.minus(from);
    Vec3 a = along.unit();
    Vec3 b = a.cross(Vec3.Z).length() < 1e-9 ? Vec3.X : a.cross(Vec3.Z).unit();
    return box(
        label,
        role,
        new OrientedBox(
            from.plus(to).times(0.5), a, b, a.cross(b), along.length() / 2, side / 2, side / 2),
        Optional.empty());
  }

  Steel plate(String label, Vec3 centre, double x, double y, double z) {
    return box(
        label,
        Role.PLATE,
        new OrientedBox(centre, Vec3.X, Vec3.Y, Vec3.Z, x / 2, y / 2, z / 2),
        Optional.empty());
  }

  Steel box(String label, Role role, OrientedBox box, Optional<ElementId> assembly) {
    pieces.add(
        new FramePiece(new ElementId(0, pieces.size() + 1L), role, label, "S", assembly, box));
    return this;
  }

  ElementId id(String label) {
    return pieces.stream().filter(p -> p.label().equals(label)).findFirst().orElseThrow().id();
  }
}
