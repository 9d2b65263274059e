package org.coatrun.shared.bid;

import org.coatrun.shared.units.Length;

/**
 * A thickness that the job file states outright.
 *
 * @param by what of the job file states it, in words
 */
public record StatedThickness(Length thickness, String by) {}
