package org.coatrun.shared.bid.programme;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A working day.
 *
 * @param day its number, from 1
 * @param floors that are worked on, in order
 * @param hours of work
 * @param bags whole bags opened
 * @param delivered bags that trucks bring
 * @param trucks that bring them
 * @param stock bags in the room when the day's work and unloading are done
 */
public record WorkDay(
    int day,
    Optional<LocalDate> date,
    List<String> floors,
    double hours,
    long bags,
    long delivered,
    int trucks,
    long stock) {

  public WorkDay {
    floors = List.copyOf(floors);
  }
}
