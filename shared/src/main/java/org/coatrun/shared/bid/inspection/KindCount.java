package org.coatrun.shared.bid.inspection;

/**
 * What a kind of member takes on a floor.
 *
 * @param members coated on the floor
 * @param drawn of them
 * @param readings on those drawn
 * @param samples of density, and of bond as many
 */
public record KindCount(String kind, long members, long drawn, long readings, long samples) {}
