package org.coatrun.shared.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.yaml.Key;

/** Days, deliveries and what is checked before a floor. */
public record Programme(
    @Key(note = "first day of spraying; not stated: days are numbered only")
        Optional<LocalDate> start,
    @Key(note = "working days", fallback = "[monday, tuesday, wednesday, thursday, friday]")
        List<Weekday> days,
    @Key(note = "storeys in the order they are sprayed; those not named follow from the lowest up")
        List<String> order,
    @Key(
            note = "dry, covered room for bags; not stated: no limit",
            least = "1 ft2",
            most = "1,000,000 ft2")
        Optional<Area> storage,
    @Key(
            note = "days from a delivery to the first bag used [common practice]",
            fallback = "1 days",
            least = "0 days",
            most = "60 days",
            unit = "days")
        int leadTime,
    @Key(
            note = "trucks that can be unloaded in a day [common practice]",
            fallback = "2",
            least = "1",
            most = "50")
        int trucksPerDay,
    @Key(
            note = "what must be so before a floor is sprayed [common practice]",
            fallback =
                "[concrete on the deck above is complete, for a roof the roofing on and tight with penthouses built and units set and roof traffic over, steel is clean of oil and loose scale and rust and form oil, clips and hangers and sleeves are on, ducts and pipes and conduits are not yet up, edge protection is up, light is enough to judge texture and thickness, air changes and temperatures are in order]")
        List<String> checks) {

  /**
   * @throws IllegalArgumentException without working days
   */
  public Programme {
    days = List.copyOf(days);
    order = List.copyOf(order);
    checks = List.copyOf(checks);
    if (days.isEmpty()) {
      throw new IllegalArgumentException("at least one working day is needed");
    }
  }
}
