package org.coatrun.shared.bid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Space;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.surface.Standing;
import org.coatrun.shared.units.Length;

/** Names the floors that elements are sprayed from, and their rooms. */
final class WorkingFloors {

  /** A floor's top lies this near its storey's height, else it is no floor of that storey. */
  private static final double OF_STOREY_M = 0.6;

  /** Without a floor in the model a foot may be this deep under its storey. */
  private static final double UNDER_STOREY_M = 0.3;

  /** Base plates lie this deep under their floor at most (common practice). */
  private static final double LET_IN_M = 0.75;

  /**
   * A floor that something is sprayed from.
   *
   * @param height of its top in world axes
   */
  record Floor(String name, double height) {}

  /**
   * What is sprayed of an element from one floor.
   *
   * @param floor its name; the element's storey where nothing better is known
   * @param top its highest point above that floor
   * @param share of the whole element
   */
  record Piece(String floor, Optional<Length> top, double share) {}

  private final Building building;
  private final Map<ElementId, String> plateStoreys = new HashMap<>();
  private final Map<ElementId, String> rooms = new HashMap<>();

  WorkingFloors(Building building) {
    this.building = building;
    Map<ElementId, String> names = new HashMap<>();
    building.storeys().forEach(s -> names.put(s.id(), s.name()));
    Stream.<Element>concat(building.slabs().stream(), building.decks().stream())
        .forEach(
            e ->
                e.identity()
                    .storey()
                    .ifPresent(s -> plateStoreys.put(e.id(), names.getOrDefault(s, ""))));
    building.spaces().forEach(s -> rooms.put(s.id(), name(s)));
  }

  /** The name of the room that an element stands in, or empty. */
  String room(Optional<Standing> standing) {
    return standing.flatMap(Standing::room).map(r -> rooms.getOrDefault(r, "")).orElse("");
  }

  /** An element as it is sprayed in one piece, from the floor under it. */
  Piece whole(Line line, Optional<Standing> standing) {
    Optional<Floor> floor = standing.flatMap(this::under);
    return new Piece(
        floor.map(Floor::name).orElseGet(line::storeyName),
        floor.flatMap(f -> above(standing.get(), f)),
        1);
  }

  /** A foot let into its floor stands on it; what lies deeper is not sprayed from there. */
  private static Optional<Length> above(Standing s, Floor floor) {
    double height = s.high().metres() - floor.height();
    return height < -LET_IN_M
        ? Optional.empty()
        : Optional.of(Length.ofMetres(Math.max(0, height)));
  }

  /**
   * The pieces that an element is sprayed in, from the lowest up: a column has one for each floor
   * that it passes, and their shares go by the height of each; all else stays whole.
   */
  List<Piece> pieces(MemberKind kind, Optional<Standing> standing, Piece whole) {
    boolean column = kind == MemberKind.COLUMN || kind == MemberKind.HOLLOW_COLUMN;
    return standing
        .filter(s -> column && !s.passed().isEmpty())
        .filter(s -> s.high().metres() > s.low().metres())
        .map(s -> pieces(s, whole.floor()))
        .orElseGet(() -> List.of(whole));
  }

  private List<Piece> pieces(Standing standing, String lowest) {
    double low = standing.low().metres();
    double whole = standing.high().metres() - low;
    List<Piece> pieces = new ArrayList<>();
    String name = lowest;
    double from = standing.floor().map(f -> f.height().metres()).orElse(low);
    double floor = low;
    for (Standing.Level next : standing.passed()) {
      double end = next.height().metres();
      pieces.add(piece(name, end - from, (end - floor) / whole));
      name = storeyAt(end, next.plate());
      from = end;
      floor = end;
    }
    double end = standing.high().metres();
    pieces.add(piece(name, end - from, (end - floor) / whole));
    return pieces;
  }

  private static Piece piece(String floor, double top, double share) {
    return new Piece(floor, Optional.of(Length.ofMetres(Math.max(0, top))), share);
  }

  /** The floor under an element. */
  Optional<Floor> under(Standing s) {
    if (s.floor().isPresent()) {
      double height = s.floor().get().height().metres();
      return Optional.of(new Floor(storeyAt(height, s.floor().get().plate()), height));
    }
    return storeyUnder(s.low().metres() + UNDER_STOREY_M)
        .map(storey -> new Floor(storey.name(), storey.elevation().metres()));
  }

  private String storeyAt(double height, ElementId plate) {
    Storey nearest = null;
    for (Storey storey : building.storeys()) {
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
    Storey under = null;
    for (Storey storey : building.storeys()) {
      if (under == null || storey.elevation().metres() <= height) {
        under = storey;
      }
    }
    return Optional.ofNullable(under);
  }

  private static String name(Space space) {
    Identity identity = space.identity();
    return space.longName().isBlank() ? identity.name() : space.longName();
  }
}
