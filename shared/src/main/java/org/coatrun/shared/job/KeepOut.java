package org.coatrun.shared.job;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.yaml.Key;

/** An area that hose, pipe and machine keep out of. */
public record KeepOut(
    @Key(note = "what to call it") String name,
    @Key(
            note = "corners in plan, in the coordinates of the model",
            fallback = "[]",
            least = "-10000 ft",
            most = "10000 ft")
        List<Vec2> zone,
    @Key(note = "storey it lies on; * stands for anything; not stated: all")
        Optional<String> storey) {

  /**
   * @throws IllegalArgumentException where the zone has under three corners
   */
  public KeepOut {
    zone = List.copyOf(zone);
    if (zone.size() < 3) {
      throw new IllegalArgumentException("a zone needs at least three corners");
    }
  }
}
