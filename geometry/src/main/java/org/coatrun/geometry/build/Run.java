package org.coatrun.geometry.build;

import java.util.Objects;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.shared.shape.Vec3;

/**
 * How a section is carried along its member.
 *
 * @param start the section square to the way at its start
 * @param end the section at the end; the same unless the member is tapered
 * @param length along the line of the section's centroid, in m
 * @param from middle of the section's start
 * @param to middle of its end
 */
public record Run(SectionOutline start, SectionOutline end, double length, Vec3 from, Vec3 to) {

  /** Whether the section changes on its way. */
  public boolean tapered() {
    return !Objects.equals(start, end);
  }
}
