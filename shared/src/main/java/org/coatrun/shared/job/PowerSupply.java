package org.coatrun.shared.job;

import java.util.Optional;
import org.coatrun.shared.rules.Conductor;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Share;
import org.coatrun.shared.yaml.Key;

/** The feeder to the machine. */
public record PowerSupply(
    @Key(
            note = "voltage between phases [common practice]",
            fallback = "480 V",
            least = "100 V",
            most = "1000 V",
            unit = "V")
        double volts,
    @Key(
            note = "current of machine, mixer and blower [common practice]",
            fallback = "60 A",
            least = "1 A",
            most = "2000 A",
            unit = "A")
        double amperes,
    @Key(note = "copper conductor size, AWG [common practice]", fallback = "\"6\"")
        Conductor conductor,
    @Key(
            note = "power factor [UFC 3-520-01: 0.8 when unknown]",
            fallback = "0.8",
            least = "0.1",
            most = "1")
        double powerFactor,
    @Key(
            note = "length of the feeder; not stated: from the plan",
            least = "1 ft",
            most = "10000 ft")
        Optional<Length> run,
    @Key(
            note = "voltage drop at most [note to NEC 210.19: 3 % on a branch]",
            fallback = "3 %",
            least = "0.1 %",
            most = "20 %")
        Share limit,
    @Key(
            note = "where power is, in the coordinates of the model",
            least = "-10000 ft",
            most = "10000 ft")
        Optional<Vec2> at) {}
