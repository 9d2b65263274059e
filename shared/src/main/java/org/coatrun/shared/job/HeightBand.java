package org.coatrun.shared.job;

import org.coatrun.shared.units.Length;
import org.coatrun.shared.yaml.Key;

/**
 * Steel up to a height above the working floor, how it is reached, and how much longer it takes.
 */
public record HeightBand(
    @Key(note = "upper end of the band, above the working floor", least = "1 ft", most = "1000 ft")
        Length upTo,
    @Key(note = "how it is reached") Access access,
    @Key(note = "hours against work from the floor", fallback = "1", least = "0.1", most = "20")
        double factor) {}
