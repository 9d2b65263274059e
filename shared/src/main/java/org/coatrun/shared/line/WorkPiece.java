package org.coatrun.shared.line;

import java.util.Objects;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/**
 * A straight piece of steel or a strip of deck to be sprayed, its coating spread evenly along it.
 *
 * @param mark what the trade calls it; may be empty
 * @param guid its GlobalId; may be empty
 * @param from one end of its middle line, in metres
 * @param to the other end; may equal {@code from}
 * @param depth its extent across the middle line
 * @param coating in-place volume; not negative
 */
public record WorkPiece(
    String mark, String guid, Vec3 from, Vec3 to, Length depth, Volume coating) {
  public WorkPiece {
    Objects.requireNonNull(mark);
    Objects.requireNonNull(guid);
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
    if (depth.metres() < 0 || coating.cubicMetres() < 0) {
      throw new IllegalArgumentException("a piece of work with a negative size: " + mark);
    }
  }
}
