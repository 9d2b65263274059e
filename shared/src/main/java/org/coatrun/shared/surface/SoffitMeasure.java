package org.coatrun.shared.surface;

import org.coatrun.shared.units.Area;

/**
 * The underside of a deck as the model draws it, whatever covers it.
 *
 * @param plan seen square to the deck
 * @param drawn its own faces, flutes unfolded where they are drawn
 * @param fluted whether flutes are drawn; where not, the plan times the developed factor of the
 *     job's deck profile is the sheet
 */
public record SoffitMeasure(Area plan, Area drawn, boolean fluted) {}
