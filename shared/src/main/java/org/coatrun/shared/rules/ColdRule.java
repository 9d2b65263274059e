package org.coatrun.shared.rules;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import org.coatrun.shared.units.Temperature;

/**
 * Steel and air at 40 F or more before, during and for 24 h after spraying (common practice).
 *
 * @param least temperature that must not be fallen under
 * @param hoursBefore before work starts
 * @param hoursAfter after work ends
 */
public record ColdRule(Temperature least, int hoursBefore, int hoursAfter) {

  /** The trade's rule (common practice). */
  public static final ColdRule USUAL = new ColdRule(Temperature.ofFahrenheit(40), 24, 24);

  /** A day's work against a record of temperatures. */
  public sealed interface Judgement {

    /** Warm enough all through. */
    record Warm() implements Judgement {}

    /** Too cold at a time. */
    record Cold(LocalDateTime at, Temperature temperature) implements Judgement {}

    /** The record does not reach over the whole span. */
    record Unknown(String missing) implements Judgement {}
  }

  /**
   * Judges work from {@code start} to {@code end}.
   *
   * @param record temperatures by time
   */
  public Judgement judge(
      LocalDateTime start, LocalDateTime end, NavigableMap<LocalDateTime, Temperature> record) {
    LocalDateTime from = start.minusHours(hoursBefore);
    LocalDateTime to = end.plusHours(hoursAfter);
    NavigableMap<LocalDateTime, Temperature> span = record.subMap(from, true, to, true);
    Optional<Map.Entry<LocalDateTime, Temperature>> cold =
        span.entrySet().stream().filter(e -> e.getValue().compareTo(least) < 0).findFirst();
    if (cold.isPresent()) {
      return new Judgement.Cold(cold.get().getKey(), cold.get().getValue());
    }
    boolean reaches =
        !span.isEmpty()
            && !record.headMap(from, true).isEmpty()
            && !record.tailMap(to, true).isEmpty();
    return reaches
        ? new Judgement.Warm()
        : new Judgement.Unknown("no temperatures for all of " + from + " to " + to);
  }
}
