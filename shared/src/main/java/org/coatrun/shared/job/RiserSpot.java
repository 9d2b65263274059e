package org.coatrun.shared.job;

import java.util.Optional;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.yaml.Key;

/** A place where pipe or hose may go up. */
public record RiserSpot(
    @Key(note = "what to call it") String name,
    @Key(
            note = "middle of the riser, in the coordinates of the model",
            least = "-10000 ft",
            most = "10000 ft")
        Vec2 at,
    @Key(note = "lowest storey it serves; not stated: the lowest") Optional<String> from,
    @Key(note = "highest storey it serves; not stated: the highest") Optional<String> to) {}
