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
 * @param roomLength length of the rectangle that machine and bags need, whichever way it lies
 * @param roomWidth its width, not above its length
 */
public record SiteFacts(
    List<Vec2> truckAccess,
    Optional<Vec2> power,
    Optional<Vec2> water,
    Length roomLength,
    Length roomWidth) {
  public SiteFacts {
    truckAccess = List.copyOf(truckAccess);
    if (roomWidth.metres() < 0 || roomLength.compareTo(roomWidth) < 0) {
      throw new IllegalArgumentException("a machine that needs less than no room");
    }
  }

  /** Nothing known; 30 ft by 20 ft for machine and bags (common practice). */
  public static SiteFacts unknown() {
    return new SiteFacts(
        List.of(), Optional.empty(), Optional.empty(), Length.ofFeet(30), Length.ofFeet(20));
  }
}
