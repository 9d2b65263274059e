package org.coatrun.shared.job;

import java.util.Optional;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.yaml.Key;

/** A place where the machine may stand. */
public record MachineSpot(
    @Key(note = "what to call it") String name,
    @Key(
            note = "middle of the spot, in the coordinates of the model",
            least = "-10000 ft",
            most = "10000 ft")
        Vec2 at,
    @Key(note = "storey it stands on; not stated: the lowest with a floor")
        Optional<String> storey) {}
