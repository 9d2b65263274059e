package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.coatrun.shared.line.EquivalentLength;
import org.coatrun.shared.line.FloorCheck;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.rules.Ventilation;
import org.coatrun.shared.rules.VoltageDrop;
import org.coatrun.shared.rules.WaterLine;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Pressure;
import org.coatrun.shared.units.Volume;

/** Fills in the engineer's sheet of a floor. */
final class FloorChecker {

  private final LineRequest request;

  FloorChecker(LineRequest request) {
    this.request = request;
  }

  /**
   * @param spot the machine that feeds the floor; the lowest where there are several
   * @param routes all lines to the floor, at least one
   * @param byHose longest line to the floor by hose alone, where there is such a way
   * @param highest highest steel over the floor
   */
  FloorCheck check(
      int floor, MachineSpot spot, List<Route> routes, OptionalDouble byHose, Length highest) {
    FloorOutline outline = request.floors().get(floor);
    Length rise = outline.elevation().minus(request.floors().get(spot.floor()).elevation());
    int storeys = Math.abs(floor - spot.floor());
    Pressure pump = pumpPressure(rise.plus(highest), most(routes, Route::length));
    EquivalentLength longest = equivalent(routes);
    Optional<Boolean> booster = booster(spot, pump);
    return new FloorCheck(
        rise,
        storeys,
        most(routes, Route::flexible),
        most(routes, Route::pipe),
        routes.stream().mapToInt(Route::bends).max().orElse(0),
        standpipe(Length.ofMetres(Math.abs(rise.metres())), storeys, byHose),
        longest,
        pump,
        booster,
        feederDrop(spot),
        fans(outline),
        new FloorNotes(request).of(floor, spot, rise, booster, longest));
  }

  /** Whether the site's supply, which loses its head up to the machine's floor, falls short. */
  private Optional<Boolean> booster(MachineSpot spot, Pressure pump) {
    Length ground = request.floors().get(request.machineFloor()).elevation();
    Length up = request.floors().get(spot.floor()).elevation().minus(ground);
    return request.utilities().supply().map(s -> s.minus(WaterLine.head(up)).compareTo(pump) < 0);
  }

  /** Why the limits ask for standpipe; empty where hose will do. */
  private List<String> standpipe(Length rise, int storeys, OptionalDouble byHose) {
    var reasons = new ArrayList<String>();
    if (!request.limits().hoseMayRise(rise, 0)) {
      reasons.add(say("the rise of %s is over %s", rise, request.limits().hoseRise()));
    }
    if (storeys > request.limits().hoseStoreys()) {
      reasons.add(storeys + " storeys are more than " + request.limits().hoseStoreys());
    }
    if (byHose.isPresent()) {
      Length hose = Length.ofMetres(byHose.getAsDouble());
      if (!request.limits().flexibleAllowed(hose)) {
        reasons.add(
            say("by hose alone the line would be %s, over %s", hose, request.limits().flexible()));
      }
    }
    return reasons;
  }

  private String say(String sentence, Length a, Length b) {
    return String.format(sentence, request.wording().length(a), request.wording().length(b));
  }

  private static Length most(List<Route> routes, Function<Route, Length> of) {
    return routes.stream().map(of).max(Comparator.naturalOrder()).orElse(Length.ZERO);
  }

  private EquivalentLength equivalent(List<Route> routes) {
    return routes.stream()
        .map(r -> EquivalentLengths.of(r, request.stock().inside()))
        .max(Comparator.comparing(EquivalentLength::quick))
        .orElseThrow();
  }

  /** Nozzle + lift to the highest steel + friction in water hose that runs along the line. */
  private Pressure pumpPressure(Length lift, Length line) {
    var u = request.utilities();
    Pressure friction = WaterLine.friction(u.waterFlow(), u.waterHose(), u.roughness(), line);
    return WaterLine.atPump(u.nozzle(), lift, friction);
  }

  private OptionalDouble feederDrop(MachineSpot spot) {
    var u = request.utilities();
    Optional<Length> run = u.feederRun().or(() -> feederRun(spot));
    if (u.feeder().isEmpty() || run.isEmpty()) {
      return OptionalDouble.empty();
    }
    double drop = VoltageDrop.threePhase(u.amperes(), u.feeder().get(), run.get());
    return OptionalDouble.of(VoltageDrop.percent(drop, u.volts()));
  }

  /** Along walls, square to each other, from where power is to the machine. */
  private Optional<Length> feederRun(MachineSpot spot) {
    return request
        .site()
        .power()
        .map(p -> Math.abs(p.x() - spot.at().x()) + Math.abs(p.y() - spot.at().y()))
        .map(Length::ofMetres);
  }

  private List<FloorCheck.Fan> fans(FloorOutline floor) {
    double changes = request.utilities().airChanges();
    if (!floor.spaces().isEmpty()) {
      return floor.spaces().stream()
          .map(s -> new FloorCheck.Fan(s.name(), Ventilation.fan(s.volume(), changes)))
          .toList();
    }
    double area = floor.plate().stream().mapToDouble(Region::area).sum();
    Volume air = Volume.ofCubicMetres(area * floor.height().metres());
    return List.of(new FloorCheck.Fan("the whole floor", Ventilation.fan(air, changes)));
  }
}
