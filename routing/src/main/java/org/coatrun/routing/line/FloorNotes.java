package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coatrun.shared.line.EquivalentLength;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Wording;
import org.coatrun.shared.rules.WaterLine;
import org.coatrun.shared.units.Length;

/** What else the engineer's sheet of a floor says, each in one sentence. */
final class FloorNotes {

  private final LineRequest request;

  FloorNotes(LineRequest request) {
    this.request = request;
  }

  /**
   * @param spot the machine that feeds the floor
   * @param rise from the machine up
   * @param booster whether the site's water falls short of what the pump needs, where known
   * @param longest equivalent length of the longest line
   */
  List<String> of(
      int floor,
      MachineSpot spot,
      Length rise,
      Optional<Boolean> booster,
      EquivalentLength longest) {
    var notes = new ArrayList<String>();
    if (floor == spot.floor()) {
      bags(spot, notes);
    }
    if (booster.orElse(false)) {
      notes.add(booster());
    }
    Optional<Length> rated = request.limits().machineEquivalent();
    if (rated.isPresent() && rated.get().compareTo(longest.quick()) < 0) {
      notes.add(
          "equivalent length "
              + words().about(longest.quick())
              + " by the quick rule is over the machine's "
              + words().about(rated.get())
              + ": an indication");
    }
    if (rise.metres() < 0) {
      notes.add("the work lies below the machine: material falls in the line");
    }
    return notes;
  }

  /** Bags stand beside the machine, and trucks unload near it. */
  private void bags(MachineSpot spot, List<String> notes) {
    if (!new MachineRoom(request, spot.floor()).beside(spot.at())) {
      notes.add("no room for the bags beside the machine: store them dry and within reach");
    }
    if (spot.floor() > request.machineFloor()) {
      notes.add("bags come up by hoist");
      return;
    }
    request.site().truckAccess().stream()
        .map(t -> Length.ofMetres(t.distance(spot.at())))
        .min(Comparator.naturalOrder())
        .map(l -> "bags are carried " + words().about(l) + " from the trucks")
        .ifPresent(notes::add);
  }

  /** The tank bridges a supply that falls short for a while. */
  private String booster() {
    double flow = request.utilities().waterFlow().gallonsPerMinute();
    double minutes = WaterLine.BOOSTER_TANK.usGallons() / flow;
    String lasts = flow > 0 ? String.format(Locale.ROOT, ", %.0f min of water", minutes) : "";
    return "booster pump with a tank of "
        + words().water(WaterLine.BOOSTER_TANK)
        + " (common practice)"
        + lasts;
  }

  private Wording words() {
    return request.wording();
  }
}
