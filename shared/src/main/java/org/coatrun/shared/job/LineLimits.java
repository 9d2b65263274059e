package org.coatrun.shared.job;

import org.coatrun.shared.units.Length;
import org.coatrun.shared.yaml.Key;

/** What the material line may be: the limits that routing keeps. */
public record LineLimits(
    @Key(
            note = "flexible hose at most, hose risers included [common practice]",
            fallback = "250 ft",
            least = "10 ft",
            most = "2000 ft")
        Length flexibleHose,
    @Key(
            note = "whip hose at most, part of the flexible hose [common practice]",
            fallback = "25 ft",
            least = "0 ft",
            most = "200 ft")
        Length whip,
    @Key(
            note = "pole gun at most [common practice]",
            fallback = "12 ft",
            least = "0 ft",
            most = "60 ft")
        Length poleGun,
    @Key(
            note = "a section of the pole gun [common practice]",
            fallback = "3 ft",
            least = "1 ft",
            most = "20 ft")
        Length poleSection,
    @Key(
            note = "flexible hose at the tip of the pole gun [common practice]",
            fallback = "18 in",
            least = "0 in",
            most = "10 ft")
        Length poleTip,
    @Key(
            note = "height that hose may carry material up without a standpipe [common practice]",
            fallback = "36 ft",
            least = "0 ft",
            most = "500 ft")
        Length hoseRise,
    @Key(
            note = "storeys that hose may carry material up without a standpipe [common practice]",
            fallback = "3",
            least = "0",
            most = "50")
        int hoseStoreys,
    @Key(
            note = "inside diameter of the transfer hose [common practice]",
            fallback = "3 in",
            least = "1 in",
            most = "6 in")
        Length hoseBore,
    @Key(
            note = "inside diameter of the whip hose [common practice]",
            fallback = "2-1/2 in",
            least = "1 in",
            most = "6 in")
        Length whipBore,
    @Key(
            note = "inside diameter of the standpipe [common practice]",
            fallback = "3 in",
            least = "1 in",
            most = "6 in")
        Length pipeBore,
    @Key(
            note = "length of a piece of hose [common practice]",
            fallback = "50 ft",
            least = "5 ft",
            most = "500 ft")
        Length hosePiece,
    @Key(
            note = "length of a piece of standpipe [common practice]",
            fallback = "10 ft",
            least = "1 ft",
            most = "100 ft")
        Length pipePiece,
    @Key(
            note = "distance of outlets along a pipe [common practice]",
            fallback = "30 ft",
            least = "3 ft",
            most = "300 ft")
        Length outletSpacing,
    @Key(
            note = "room that hose keeps from walls and columns [common practice]",
            fallback = "6 in",
            least = "0 in",
            most = "10 ft")
        Length clearance,
    @Key(
            note = "least radius that hose is bent to [common practice]",
            fallback = "3 ft",
            least = "0 ft",
            most = "50 ft")
        Length bendRadius,
    @Key(
            note = "nozzle from the steel [common practice]",
            fallback = "24 in",
            least = "6 in",
            most = "6 ft")
        Length nozzleDistance,
    @Key(
            note = "length of a pass along a flute [common practice]",
            fallback = "12 ft",
            least = "1 ft",
            most = "100 ft")
        Length flutePass,
    @Key(
            note = "equivalent feet for a foot of rise [powderprocess.net quick method: 2]",
            fallback = "2",
            least = "1",
            most = "20")
        double riseFactor,
    @Key(
            note = "equivalent length of a bend [powderprocess.net quick method: 5 m]",
            fallback = "5 m",
            least = "0 m",
            most = "50 m")
        Length bendEquivalent) {}
