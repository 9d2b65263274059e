package org.coatrun.shared.rules;

import java.util.Optional;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.units.Length;

/**
 * What Table 601 needs to know of an element.
 *
 * @param frameClass primary frame or secondary; unknown counts as primary, the higher hours
 * @param roofConstruction whether it is part of roof construction
 * @param supportsOnlyRoof whether it carries a roof and nothing else
 * @param heightAboveFloor the lowest part of the roof construction above the floor immediately
 *     below, where known
 */
public record FrameFacts(
    FrameClass frameClass,
    boolean roofConstruction,
    boolean supportsOnlyRoof,
    Optional<Length> heightAboveFloor) {

  /** A member of a floor. */
  public static FrameFacts floor(FrameClass frameClass) {
    return new FrameFacts(frameClass, false, false, Optional.empty());
  }

  /** A member of a roof at a height above the floor below. */
  public static FrameFacts roof(FrameClass frameClass, Length heightAboveFloor) {
    return new FrameFacts(frameClass, true, true, Optional.of(heightAboveFloor));
  }
}
