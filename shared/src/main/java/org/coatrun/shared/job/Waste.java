package org.coatrun.shared.job;

import org.coatrun.shared.units.Share;
import org.coatrun.shared.yaml.Key;

/** Material lost as overspray and waste, by kind of member; light steel loses more. */
public record Waste(
    @Key(note = "columns [common practice]", fallback = "12 %", least = "0 %", most = "90 %")
        Share column,
    @Key(
            note = "beams and girders [common practice]",
            fallback = "12 %",
            least = "0 %",
            most = "90 %")
        Share beam,
    @Key(
            note = "braces and hangers [common practice]",
            fallback = "20 %",
            least = "0 %",
            most = "90 %")
        Share brace,
    @Key(
            note = "joists, purlins and rafters [common practice]",
            fallback = "30 %",
            least = "0 %",
            most = "90 %")
        Share joist,
    @Key(note = "trusses [common practice]", fallback = "25 %", least = "0 %", most = "90 %")
        Share truss,
    @Key(note = "deck [common practice]", fallback = "8 %", least = "0 %", most = "90 %")
        Share deck,
    @Key(note = "all else [common practice]", fallback = "20 %", least = "0 %", most = "90 %")
        Share other) {}
