package org.coatrun.shared.listing;

import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.yaml.Key;

/** Thickness on deck for one rating. */
public record ListedDeck(
    @Key(note = "restrained, unrestrained or either", fallback = "either") Restraint restraint,
    @Key(note = "rating", least = "15 min", most = "4 h") FireDuration hours,
    @Key(note = "tested thickness", least = "1/16 in", most = "6 in") Length thickness) {}
