package org.coatrun.shared.job;

import java.util.Optional;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.yaml.Key;

/** Ventilation while material cures. */
public record AirSupply(
    @Key(
            note = "air changes an hour in enclosed areas [common practice]",
            fallback = "4",
            least = "0.1",
            most = "100")
        double changes,
    @Key(note = "what one fan moves", least = "1 cfm", most = "1,000,000 cfm")
        Optional<FlowRate> fan) {}
