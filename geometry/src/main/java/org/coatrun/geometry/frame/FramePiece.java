package org.coatrun.geometry.frame;

import java.util.Optional;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.solid.Box;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Extent;

/**
 * A piece of steel as the frame sees it: what the model calls it, and the box it fills.
 *
 * @param label mark, name, GlobalId or number: the first that the model gives
 * @param section designation, or empty
 */
public record FramePiece(
    ElementId id,
    Role role,
    String label,
    String section,
    Optional<ElementId> assembly,
    OrientedBox box) {

  /** Above this share of upright, a piece that the model does not call a brace is a column. */
  private static final double UPRIGHT = Math.sin(Math.toRadians(75));

  /** Above this share of upright, a piece without a calling is a brace and no sloping beam. */
  private static final double LEANING = Math.sin(Math.toRadians(30));

  /** Below this share of upright a piece lies. */
  private static final double LYING = Math.sin(Math.toRadians(15));

  /** A piece from its member, its body, and the box about the body's form. */
  public static FramePiece of(Member member, Thing body, OrientedBox box) {
    return new FramePiece(
        member.id(),
        member.role(),
        label(member.identity()),
        member.section().name(),
        member.identity().assembly(),
        box.moved(body.at()));
  }

  /** The smallest box that runs along a body, in the axes of its form. */
  public static OrientedBox box(Form form) {
    return PieceBoxes.about(form);
  }

  /** Where a body is, by the box about its form. */
  public static Extent extent(Thing body, OrientedBox form) {
    OrientedBox box = form.moved(body.at());
    Box world = body.bounds();
    double across =
        box.halfWidth() * Math.abs(box.across().z()) + box.halfHeight() * Math.abs(box.up().z());
    return new Extent(
        body.id(),
        box.end(-1),
        box.end(1),
        2 * across,
        new Vec3(world.minX(), world.minY(), world.minZ()),
        new Vec3(world.maxX(), world.maxY(), world.maxZ()));
  }

  private static String label(Identity i) {
    if (!i.mark().isBlank()) {
      return i.mark();
    }
    if (!i.name().isBlank()) {
      return i.name();
    }
    return i.guid().isBlank() ? "#" + i.id().step() : i.guid();
  }

  /** Plates and fasteners pass forces on but do not span. */
  boolean isPlate() {
    return role == Role.PLATE || role == Role.FASTENER;
  }

  boolean isColumn() {
    return switch (role) {
      case COLUMN -> true;
      case BEAM, MEMBER, OTHER -> box.uprightness() > UPRIGHT && box.length() > 1.5;
      default -> false;
    };
  }

  boolean isBrace() {
    boolean leans = box.uprightness() > LEANING && box.uprightness() <= UPRIGHT;
    return role == Role.BRACE || (leans && (role == Role.MEMBER || role == Role.OTHER));
  }

  boolean lies() {
    return box.uprightness() <= LYING;
  }
}
