package org.coatrun.shared.listing;

import org.coatrun.shared.units.Length;
import org.coatrun.shared.yaml.Key;

/** One tested row of a table. */
public record ListedRow(
    @Key(note = "section factor, in the form of the table", least = "0.0001", most = "10000")
        double factor,
    @Key(note = "tested thickness", least = "1/16 in", most = "6 in") Length thickness) {}
