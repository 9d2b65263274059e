package org.coatrun.shared.bid.inspection;

import org.coatrun.shared.bid.Coated;
import org.coatrun.shared.rules.ReadingPlace;
import org.coatrun.shared.units.Length;

/**
 * A member drawn for readings, or a spot of a deck.
 *
 * @param set its number on the whole sheet, from 1
 * @param design thickness
 */
public record Drawn(int set, Coated item, ReadingPlace places, Length design) {}
