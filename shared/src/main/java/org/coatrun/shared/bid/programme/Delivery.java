package org.coatrun.shared.bid.programme;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What trucks bring on a working day.
 *
 * @param day number of the working day; 0 is the one before the first day of spraying
 * @param trucks that are unloaded
 * @param lastUse number of the working day on which its last bag is opened
 * @param keptDays calendar days from this delivery to that day
 */
public record Delivery(
    int day,
    Optional<LocalDate> date,
    int trucks,
    long pallets,
    long bags,
    int lastUse,
    long keptDays) {}
