package org.coatrun.shared.job;

import java.util.List;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.yaml.Key;

/** Where machine, risers and trucks may be. */
public record Site(
    @Key(note = "places for the machine; none: the program proposes some")
        List<MachineSpot> machineSpots,
    @Key(note = "places for risers beside those the model shows") List<RiserSpot> risers,
    @Key(note = "areas to keep out of") List<KeepOut> keepOuts,
    @Key(note = "sides where trucks can unload", fallback = "[north, east, south, west]")
        List<Side> accessSides,
    @Key(
            note =
                "machine positions at most, one after the other, higher up where the lift-rating asks for it; a move is a lost shift",
            fallback = "1",
            least = "1",
            most = "4")
        int positions,
    @Key(
            note =
                "width of level ground beside the building to assume where no slab has room for the machine; 0 ft: none",
            fallback = "40 ft",
            least = "0 ft",
            most = "500 ft")
        Length ground) {
  public Site {
    machineSpots = List.copyOf(machineSpots);
    risers = List.copyOf(risers);
    keepOuts = List.copyOf(keepOuts);
    accessSides = List.copyOf(accessSides);
  }
}
