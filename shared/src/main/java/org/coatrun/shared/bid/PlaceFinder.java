package org.coatrun.shared.bid;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.coatrun.shared.estimate.DeckLine;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.frame.Connection;
import org.coatrun.shared.frame.FramePart;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Space;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Standing;
import org.coatrun.shared.units.Length;

/** Names the place of each element: working floor, height above it, room, roof. */
final class PlaceFinder {

  /** A floor's top lies this near its storey's height, else it is no floor of that storey. */
  private static final double OF_STOREY_M = 0.6;

  /** Without a floor in the model a foot may be this deep under its storey. */
  private static final double UNDER_STOREY_M = 0.3;

  /** Base plates lie this deep under their floor at most (common practice). */
  private static final double LET_IN_M = 0.75;

  private record Floor(String name, double height) {}

  private final Takeoff takeoff;
  private final LoadPaths loads;
  private final RoofPlates roofs;
  private final Map<ElementId, String> plateStoreys = new HashMap<>();
  private final Map<ElementId, String> rooms = new HashMap<>();
  private final Map<ElementId, List<ElementId>> hosts;
  private final Map<String, Double> lowestRoof = new HashMap<>();

  PlaceFinder(
      Takeoff takeoff, LoadPaths loads, RoofPlates roofs, Map<ElementId, List<ElementId>> hosts) {
    this.takeoff = takeoff;
    this.loads = loads;
    this.roofs = roofs;
    this.hosts = hosts;
    Map<ElementId, String> names = new HashMap<>();
    takeoff.building().storeys().forEach(s -> names.put(s.id(), s.name()));
    Stream.<Element>concat(takeoff.building().slabs().stream(), takeoff.building().decks().stream())
        .forEach(
            e ->
                e.identity()
                    .storey()
                    .ifPresent(s -> plateStoreys.put(e.id(), names.getOrDefault(s, ""))));
    takeoff.building().spaces().forEach(s -> rooms.put(s.id(), name(s)));
    takeoff.members().forEach(this::noteRoof);
    takeoff.decks().forEach(this::noteRoof);
  }

  /** The members that each plate is on, by the frame, sorted. */
  static Map<ElementId, List<ElementId>> hosts(Takeoff takeoff) {
    Map<ElementId, List<ElementId>> hosts = new HashMap<>();
    takeoff.surfaces().frame().connections().stream()
        .filter(c -> c.kind() == Connection.Kind.TOUCHES)
        .forEach(
            c ->
                hosts.merge(
                    c.member(),
                    List.of(c.support()),
                    (a, b) -> Stream.concat(a.stream(), b.stream()).distinct().sorted().toList()));
    return hosts;
  }

  /** The place of an element of the takeoff. */
  Place of(Line line) {
    ElementId id = line.identity().id();
    Optional<Standing> standing = takeoff.surfaces().standing(id);
    if (standing.isEmpty()) {
      return Place.onStorey(line.storeyName());
    }
    Standing s = standing.get();
    Optional<Floor> floor = floor(s);
    boolean roof = isRoof(line);
    return new Place(
        line.storeyName(),
        floor.map(Floor::name).orElse(line.storeyName()),
        Optional.of(inModel(s.middle())),
        s.room().map(r -> rooms.getOrDefault(r, "")).orElse(""),
        floor.flatMap(f -> above(s, f)),
        roof,
        supportsOnlyRoof(line),
        roof
            ? floor.map(Floor::name).map(lowestRoof::get).map(Length::ofMetres)
            : Optional.empty());
  }

  /** A foot let into its floor stands on it; what lies deeper is not sprayed from there. */
  private static Optional<Length> above(Standing s, Floor floor) {
    double height = s.high().metres() - floor.height();
    return height < -LET_IN_M
        ? Optional.empty()
        : Optional.of(Length.ofMetres(Math.max(0, height)));
  }

  private void noteRoof(Line line) {
    if (isRoof(line)) {
      takeoff
          .surfaces()
          .standing(line.identity().id())
          .ifPresent(
              s ->
                  floor(s)
                      .ifPresent(
                          f ->
                              lowestRoof.merge(
                                  f.name(),
                                  Math.max(0, s.low().metres() - f.height()),
                                  Math::min)));
    }
  }

  private boolean isRoof(Line line) {
    if (line instanceof DeckLine deck) {
      return roofs.isRoof(deck.identity().id());
    }
    ElementId id = line.identity().id();
    return supportsOnlyRoof(line) && part((MemberLine) line) != FramePart.COLUMN && !onColumn(id);
  }

  private boolean onColumn(ElementId plate) {
    return hosts.getOrDefault(plate, List.of()).stream()
        .flatMap(h -> takeoff.surfaces().frame().member(h).stream())
        .anyMatch(m -> m.part() == FramePart.COLUMN);
  }

  private boolean supportsOnlyRoof(Line line) {
    ElementId id = line.identity().id();
    if (line instanceof DeckLine) {
      return roofs.isRoof(id);
    }
    List<ElementId> on = hosts.getOrDefault(id, List.of());
    return part((MemberLine) line) == FramePart.PLATE
        ? !on.isEmpty() && on.stream().allMatch(loads::supportsOnlyRoof)
        : loads.supportsOnlyRoof(id);
  }

  private static FramePart part(MemberLine line) {
    return line.frame().map(f -> f.part()).orElse(FramePart.OTHER);
  }

  private Optional<Floor> floor(Standing s) {
    if (s.floor().isPresent()) {
      double height = s.floor().get().height().metres();
      return Optional.of(new Floor(storeyAt(height, s.floor().get().plate()), height));
    }
    return storeyUnder(s.low().metres() + UNDER_STOREY_M)
        .map(storey -> new Floor(storey.name(), storey.elevation().metres()));
  }

  /** The storey by which a floor is known. */
  String storeyOf(Standing.Level floor) {
    return storeyAt(floor.height().metres(), floor.plate());
  }

  private String storeyAt(double height, ElementId plate) {
    Storey nearest = null;
    for (Storey storey : takeoff.building().storeys()) {
      double off = Math.abs(storey.elevation().metres() - height);
      if (off <= OF_STOREY_M
          && (nearest == null || off < Math.abs(nearest.elevation().metres() - height))) {
        nearest = storey;
      }
    }
    if (nearest != null) {
      return nearest.name();
    }
    String own = plateStoreys.getOrDefault(plate, "");
    return own.isEmpty() ? storeyUnder(height).map(Storey::name).orElse("") : own;
  }

  /** The highest storey that lies no higher; the lowest one where all lie higher. */
  private Optional<Storey> storeyUnder(double height) {
    List<Storey> storeys = takeoff.building().storeys();
    Optional<Storey> under =
        storeys.stream()
            .filter(s -> s.elevation().metres() <= height)
            .reduce((lower, higher) -> higher);
    return under.or(() -> storeys.stream().findFirst());
  }

  private Vec2 inModel(Vec2 middle) {
    Vec3 origin = takeoff.building().origin();
    return new Vec2(middle.x() + origin.x(), middle.y() + origin.y());
  }

  private static String name(Space space) {
    Identity identity = space.identity();
    return space.longName().isBlank() ? identity.name() : space.longName();
  }
}
