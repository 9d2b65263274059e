package org.coatrun.shared.bid.programme;

import java.util.List;
import java.util.OptionalLong;
import org.coatrun.shared.finding.Finding;

/**
 * The programme of a job.
 *
 * @param floors that have work, in the order they are sprayed
 * @param days each working day; empty where the programme is too long to be listed
 * @param deliveries in order
 * @param checks for each floor, in order
 * @param workingDays from the first to the last
 * @param bags that are opened in all
 * @param trucks in all
 * @param room bags that the storage room takes; empty where there is no limit
 * @param findings about the order, the room, the shelf life and the cold
 */
public record ProgrammePlan(
    List<FloorTime> floors,
    List<WorkDay> days,
    List<Delivery> deliveries,
    List<FloorCheck> checks,
    int workingDays,
    long bags,
    long trucks,
    OptionalLong room,
    List<Finding> findings) {

  public ProgrammePlan {
    floors = List.copyOf(floors);
    days = List.copyOf(days);
    deliveries = List.copyOf(deliveries);
    checks = List.copyOf(checks);
    findings = List.copyOf(findings);
  }

  /** The most bags opened in a day. */
  public long mostBagsInADay() {
    return days.stream().mapToLong(WorkDay::bags).max().orElse(0);
  }

  /** The most bags in the room at the end of a day. */
  public long mostStock() {
    return days.stream().mapToLong(WorkDay::stock).max().orElse(0);
  }
}
