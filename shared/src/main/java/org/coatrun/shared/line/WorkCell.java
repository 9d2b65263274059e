package org.coatrun.shared.line;

import java.util.List;
import java.util.Objects;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/**
 * The work within reach of one place on a floor.
 *
 * @param floor index of the floor it is sprayed from
 * @param at where the nozzle stands; free
 * @param coating in-place volume
 * @param highest top of the highest steel above the floor
 * @param access the simplest means that reaches all of it
 * @param marks what is sprayed from here, sorted
 */
public record WorkCell(
    int floor, Vec2 at, Volume coating, Length highest, Access access, List<String> marks) {
  public WorkCell {
    Objects.requireNonNull(at);
    Objects.requireNonNull(access);
    marks = List.copyOf(marks);
  }
}
