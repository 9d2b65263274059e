package org.coatrun.shared.line;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/**
 * What is known of the site around the machine.
 *
 * @param truckAccess where trucks can unload, seen from above; empty where not known
 * @param power where power is taken from
 * @param water where water is taken from
 * @param room side of the square that machine and bags need
 */
public record SiteFacts(
    List<Vec2> truckAccess, Optional<Vec2> power, Optional<Vec2> water, Length room) {
  public SiteFacts {
    truckAccess = List.copyOf(truckAccess);
    if (room.metres() < 0) {
      throw new IllegalArgumentException("a machine that needs less than no room");
    }
  }

  /** Nothing known; 20 ft square for machine and bags (common practice). */
  public static SiteFacts unknown() {
    return new SiteFacts(List.of(), Optional.empty(), Optional.empty(), Length.ofFeet(20));
  }
}
