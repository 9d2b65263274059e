package org.coatrun.shared.job;

import org.coatrun.shared.yaml.Key;

/** What a crew with one nozzle puts in place in an hour of work from the floor. */
public record SprayRates(
    @Key(
            note = "columns [common practice]",
            fallback = "400 bf/h",
            least = "1 bf/h",
            most = "10000 bf/h",
            unit = "bf/h")
        double column,
    @Key(
            note = "beams and girders [common practice]",
            fallback = "500 bf/h",
            least = "1 bf/h",
            most = "10000 bf/h",
            unit = "bf/h")
        double beam,
    @Key(
            note = "braces and hangers [common practice]",
            fallback = "300 bf/h",
            least = "1 bf/h",
            most = "10000 bf/h",
            unit = "bf/h")
        double brace,
    @Key(
            note = "joists, purlins and rafters [common practice]",
            fallback = "250 bf/h",
            least = "1 bf/h",
            most = "10000 bf/h",
            unit = "bf/h")
        double joist,
    @Key(
            note = "trusses [common practice]",
            fallback = "250 bf/h",
            least = "1 bf/h",
            most = "10000 bf/h",
            unit = "bf/h")
        double truss,
    @Key(
            note = "deck [common practice]",
            fallback = "700 bf/h",
            least = "1 bf/h",
            most = "10000 bf/h",
            unit = "bf/h")
        double deck,
    @Key(
            note = "all else [common practice]",
            fallback = "250 bf/h",
            least = "1 bf/h",
            most = "10000 bf/h",
            unit = "bf/h")
        double other) {}
