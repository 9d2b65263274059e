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
 * @param ground width of the level ground beside the building that is assumed where no slab has
 *     that room; zero where none may be assumed
 */
public record SiteFacts(
    List<Vec2> truckAccess,
    Optional<Vec2> power,
    Optional<Vec2> water,
    Length roomLength,
    Length roomWidth,
    Length ground) {
  public SiteFacts {
    truckAccess = List.copyOf(truckAccess);
    if (roomWidth.metres() < 0 || ground.metres() < 0 || roomLength.compareTo(roomWidth) < 0) {
      throw new IllegalArgumentException("a machine that needs less than no room");
    }
  }

  /**
   * Nothing known; 30 ft by 20 ft for machine and bags (common practice), and 40 ft of ground
   * beside the building (our own choice).
   */
  public static SiteFacts unknown() {
    return new SiteFacts(
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Length.ofFeet(30),
        Length.ofFeet(20),
        Length.ofFeet(40));
  }
}
