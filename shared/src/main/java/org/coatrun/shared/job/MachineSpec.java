package org.coatrun.shared.job;

import java.util.Optional;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.yaml.Key;

/** The machine and what it can do. */
public record MachineSpec(
    @Key(
            note = "bags it sprays in an hour of work [common practice]",
            fallback = "25 bags/h",
            least = "1 bags/h",
            most = "500 bags/h",
            unit = "bags/h")
        double rate,
    @Key(
            note = "machines that work side by side, each with a nozzle and a line",
            fallback = "1",
            least = "1",
            most = "20")
        int machines,
    @Key(
            note = "equivalent length it can convey, as its maker rates it",
            least = "10 ft",
            most = "10000 ft")
        Optional<Length> conveyingRating,
    @Key(note = "rise it can convey, as its maker rates it", least = "10 ft", most = "2000 ft")
        Optional<Length> liftRating,
    @Key(
            note =
                "length of level ground it needs with the mixer and the bags beside it [common practice]",
            fallback = "30 ft",
            least = "5 ft",
            most = "200 ft")
        Length roomLength,
    @Key(
            note = "width of that ground [common practice]",
            fallback = "20 ft",
            least = "5 ft",
            most = "200 ft")
        Length roomWidth) {}
