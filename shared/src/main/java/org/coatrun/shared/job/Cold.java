package org.coatrun.shared.job;

import java.util.Optional;
import org.coatrun.shared.rules.ColdRule;
import org.coatrun.shared.units.Temperature;
import org.coatrun.shared.yaml.Key;

/** The cold-weather rule and where temperatures stand. */
public record Cold(
    @Key(
            note = "least temperature of steel and air [common practice]",
            fallback = "40 F",
            least = "-40 F",
            most = "120 F")
        Temperature least,
    @Key(
            note = "hours before work [common practice]",
            fallback = "24 h",
            least = "0 h",
            most = "240 h",
            unit = "h")
        int before,
    @Key(
            note = "hours after work [common practice]",
            fallback = "24 h",
            least = "0 h",
            most = "240 h",
            unit = "h")
        int after,
    @Key(note = "CSV file beside this one: time, temperature") Optional<String> temperatures) {

  /** The rule that these numbers make. */
  public ColdRule rule() {
    return new ColdRule(least, before, after);
  }
}
