package org.coatrun.shared.bid.programme;

/**
 * What must be so before a floor is sprayed.
 *
 * @param number from 1 on each floor
 */
public record FloorCheck(String floor, int firstDay, int number, String check) {}
