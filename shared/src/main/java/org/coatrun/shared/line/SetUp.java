package org.coatrun.shared.line;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/**
 * One outlet of the line on one floor and what is sprayed from it.
 *
 * @param number in the order of work, from 1
 * @param machine name of the machine spot
 * @param riser name of the riser; empty on the machine's own floor
 * @param outlet where hose leaves the pipe, the riser or the machine
 * @param cells indices into the plan's cells, the farthest first
 * @param coating sprayed from here
 * @param hose longest hose from the outlet as laid, whip included
 * @param flexible longest flexible line from the machine, whip included
 * @param hardware of this line from machine to nozzle
 */
public record SetUp(
    int number,
    int floor,
    String machine,
    Optional<String> riser,
    Vec2 outlet,
    List<Integer> cells,
    Volume coating,
    Length hose,
    Length flexible,
    List<Hardware> hardware) {
  public SetUp {
    Objects.requireNonNull(machine);
    Objects.requireNonNull(riser);
    Objects.requireNonNull(outlet);
    cells = List.copyOf(cells);
    hardware = List.copyOf(hardware);
  }
}
