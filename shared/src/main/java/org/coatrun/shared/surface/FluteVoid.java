package org.coatrun.shared.surface;

import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Volume;

/**
 * The voids that a deck's flutes, where they are drawn, leave above a member where they run across
 * it: to be filled, or coated inside.
 *
 * @param deck whose flutes they are
 * @param flange face of the member under the voids
 * @param soffit face of the deck over the voids
 * @param volume between both
 */
public record FluteVoid(ElementId deck, Area flange, Area soffit, Volume volume) {}
