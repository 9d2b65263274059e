package org.coatrun.shared.job;

import java.util.Optional;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Temperature;
import org.coatrun.shared.yaml.Key;

/** How thickness is taken from a listing. */
public record ThicknessChoice(
    @Key(note = "use restrained ratings unless a rule says otherwise", fallback = "no")
        boolean restrained,
    @Key(
            note =
                "name of the listing to use unless a rule says otherwise; not stated: the first one that has a row")
        Optional<String> listing,
    @Key(
            note = "critical temperature for tables that go by it [EN 13381-4, common practice]",
            fallback = "550 C",
            least = "300 C",
            most = "800 C")
        Temperature criticalTemperature,
    @Key(
            note =
                "thickness of steel that has no section factor; not stated: a plate takes that of the member it is on, else it is a finding",
            least = "1/8 in",
            most = "6 in")
        Optional<Length> withoutFactor) {}
