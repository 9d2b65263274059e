package org.coatrun.shared.bid.inspection;

import org.coatrun.shared.units.Length;

/**
 * A row of a field sheet: one place where thickness is read.
 *
 * @param set number of the member or deck spot on the whole sheet, from 1
 * @param guid GlobalId, or empty
 * @param name mark or name, or empty
 * @param kind what it is, in a word
 * @param section designation, {@code deck}, or empty
 * @param end of the 12 in length: 1 or 2; a deck spot has one
 * @param place number of the place at that end, from 1
 * @param where the place in words
 * @param design thickness
 * @param least lowest single reading that the design allows
 */
public record FieldRow(
    String floor,
    int set,
    String guid,
    String name,
    String kind,
    String section,
    int end,
    int place,
    String where,
    Length design,
    Length least) {}
