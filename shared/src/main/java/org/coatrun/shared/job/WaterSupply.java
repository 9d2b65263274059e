package org.coatrun.shared.job;

import java.util.Optional;
import org.coatrun.shared.rules.HoseSize;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Pressure;
import org.coatrun.shared.units.Volume;
import org.coatrun.shared.yaml.Key;

/** Water at the machine and at the nozzle. */
public record WaterSupply(
    @Key(
            note = "least pressure at the nozzle [common practice]",
            fallback = "65 psi",
            least = "1 psi",
            most = "1000 psi")
        Pressure atNozzle,
    @Key(note = "pressure at the supply, measured", least = "0 psi", most = "500 psi")
        Optional<Pressure> supplyPressure,
    @Key(note = "flow at the supply, measured", least = "0.1 gal/min", most = "5000 gal/min")
        Optional<FlowRate> supplyFlow,
    @Key(note = "water hose beside the material hose [common practice]", fallback = "3/4 in")
        HoseSize hose,
    @Key(
            note =
                "Hazen-Williams C of the water hose or pipe [150 plastic, 140 polyethylene, 120 steel]",
            fallback = "140",
            least = "40",
            most = "160")
        double roughness,
    @Key(
            note = "tank of the booster pump [common practice]",
            fallback = "55 gal",
            least = "1 gal",
            most = "10000 gal")
        Volume boosterTank,
    @Key(
            note = "where the supply is, in the coordinates of the model",
            least = "-10000 ft",
            most = "10000 ft")
        Optional<Vec2> at) {}
