package org.coatrun.shared.job;

import java.util.Optional;
import org.coatrun.shared.rules.ConstructionType;
import org.coatrun.shared.rules.Occupancy;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.yaml.Key;

/** What the code asks of the building. */
public record Construction(
    @Key(note = "construction type of IBC Table 601; not stated: I-A, the highest, with a finding")
        Optional<ConstructionType> type,
    @Key(note = "occupancy group; not stated: high roofs keep their rating")
        Optional<Occupancy> occupancy,
    @Key(
            note =
                "use footnotes a and b of Table 601: frames under a roof only, and roofs 20 ft or more up",
            fallback = "yes")
        boolean roofRelief,
    @Key(
            note =
                "highest occupied floor above fire department access; not stated: the highest storey that has a floor",
            least = "0 ft",
            most = "3000 ft")
        Optional<Length> highestFloor,
    @Key(
            note = "height of the building; not stated: its highest storey",
            least = "0 ft",
            most = "3500 ft")
        Optional<Length> height) {}
