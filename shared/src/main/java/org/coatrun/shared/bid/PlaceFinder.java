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
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Standing;
import org.coatrun.shared.units.Length;

/** Finds the place of each element: working floor, height above it, room, roof. */
final class PlaceFinder {

  private final Takeoff takeoff;
  private final WorkingFloors floors;
  private final LoadPaths loads;
  private final RoofPlates roofs;
  private final Map<ElementId, List<ElementId>> hosts;
  private final Map<String, Double> lowestRoof = new HashMap<>();

  PlaceFinder(
      Takeoff takeoff,
      WorkingFloors floors,
      LoadPaths loads,
      RoofPlates roofs,
      Map<ElementId, List<ElementId>> hosts) {
    this.takeoff = takeoff;
    this.floors = floors;
    this.loads = loads;
    this.roofs = roofs;
    this.hosts = hosts;
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
    WorkingFloors.Piece whole = floors.whole(line, standing);
    boolean roof = isRoof(line);
    return new Place(
        line.storeyName(),
        whole.floor(),
        Optional.of(inModel(standing.get().middle())),
        floors.room(standing),
        whole.top(),
        roof,
        supportsOnlyRoof(line),
        roof
            ? floors.under(standing.get()).map(f -> lowestRoof.get(f.name())).map(Length::ofMetres)
            : Optional.empty());
  }

  private void noteRoof(Line line) {
    if (isRoof(line)) {
      takeoff
          .surfaces()
          .standing(line.identity().id())
          .ifPresent(
              s ->
                  floors
                      .under(s)
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

  private Vec2 inModel(Vec2 middle) {
    Vec3 origin = takeoff.building().origin();
    return new Vec2(middle.x() + origin.x(), middle.y() + origin.y());
  }
}
