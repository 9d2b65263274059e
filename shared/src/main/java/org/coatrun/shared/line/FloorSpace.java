package org.coatrun.shared.line;

import java.util.Objects;
import org.coatrun.shared.units.Volume;

/** An enclosed space on a floor, by its name, with the volume of air in it. */
public record FloorSpace(String name, Volume volume) {
  public FloorSpace {
    Objects.requireNonNull(name);
    if (volume.cubicMetres() < 0) {
      throw new IllegalArgumentException("a space of negative volume: " + name);
    }
  }
}
