package org.coatrun.shared.job;

import org.coatrun.shared.units.Share;
import org.coatrun.shared.yaml.Key;

/** Prices in one currency, zero where not stated; a total that lacks a price says so. */
public record Prices(
    @Key(note = "currency code or word", fallback = "USD") String currency,
    @Key(note = "a bag of material, delivered", fallback = "0", least = "0", most = "1000000")
        double bag,
    @Key(note = "a gallon of bonding coat", fallback = "0", least = "0", most = "1000000")
        double bondingGallon,
    @Key(note = "an hour of one person", fallback = "0", least = "0", most = "1000000")
        double personHour,
    @Key(note = "a day of a machine with its hose", fallback = "0", least = "0", most = "1000000")
        double machineDay,
    @Key(note = "a day of lift or scaffold", fallback = "0", least = "0", most = "1000000")
        double liftDay,
    @Key(note = "a truck", fallback = "0", least = "0", most = "1000000") double delivery,
    @Key(note = "overhead on cost", fallback = "0 %", least = "0 %", most = "100 %") Share overhead,
    @Key(note = "profit on cost and overhead", fallback = "0 %", least = "0 %", most = "100 %")
        Share profit) {}
