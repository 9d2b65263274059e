package org.coatrun.shared.bid;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.surface.Standing;
import org.coatrun.shared.surface.Surfaces;

/**
 * Which slabs and decks are roof.
 *
 * <p>By the model's class or predefined type, or its name, or that of its type; a sheet by the slab
 * that lies on it; else by the name of the storey, where nothing lies above. Anything else is
 * floor, which asks for no fewer hours.
 */
final class RoofPlates {

  private static final int ANY_CASE = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
  private static final Pattern ROOF =
      Pattern.compile(
          "roof|\\bdach|\\bdak\\b|dakvloer|toiture|\\btoit\\b|cubierta|azotea|copertura|\\btetto\\b|"
              + "\\byttertak|\\btak\\b|vesikatto|\\bkatto",
          ANY_CASE);
  private static final Pattern FLOOR =
      Pattern.compile(
          "floor|\\bdecke\\b|geschossdecke|\\bvloer|plancher|dalle|forjado|solaio|bjelkelag|"
              + "v\u00e4lipohja",
          ANY_CASE);

  /** What lies this near on a sheet is part of the same construction. */
  private static final double ON_IT_M = 0.1;

  private final Surfaces surfaces;
  private final Map<ElementId, Element> plates = new HashMap<>();
  private final Map<ElementId, String> storeys = new HashMap<>();
  private final Set<ElementId> roofs = new HashSet<>();

  private RoofPlates(Building building, Surfaces surfaces) {
    this.surfaces = surfaces;
    for (Storey storey : building.storeys()) {
      storeys.put(storey.id(), storey.name());
    }
    building.slabs().forEach(s -> plates.put(s.id(), s));
    building.decks().forEach(d -> plates.put(d.id(), d));
  }

  /** The slabs and decks of a building that are roof. */
  static RoofPlates of(Building building, Surfaces surfaces) {
    RoofPlates found = new RoofPlates(building, surfaces);
    found.plates.values().stream()
        .filter(p -> found.roof(p, 1))
        .forEach(p -> found.roofs.add(p.id()));
    return found;
  }

  boolean isPlate(ElementId id) {
    return plates.containsKey(id);
  }

  boolean isRoof(ElementId id) {
    return roofs.contains(id);
  }

  /** Whether concrete lies on a deck, by its form or by the slab that lies on it. */
  boolean carriesConcrete(Deck deck) {
    return deck.form() == Deck.Form.SLAB_ON_DECK || lyingOn(deck).isPresent();
  }

  private boolean roof(Element plate, int sheets) {
    if (isStatedRoof(plate)) {
      return true;
    }
    Identity identity = plate.identity();
    String own = identity.name() + " / " + identity.typeName();
    if (ROOF.matcher(own).find()) {
      return true;
    }
    Optional<Element> on = lyingOn(plate);
    if (on.isPresent() && sheets > 0) {
      return roof(on.get(), sheets - 1);
    }
    return !FLOOR.matcher(own).find() && onTopmostRoofStorey(plate);
  }

  private static boolean isStatedRoof(Element plate) {
    return plate instanceof Deck deck
        ? deck.roof()
        : plate instanceof Slab slab && slab.kind() == Slab.Kind.ROOF;
  }

  private boolean onTopmostRoofStorey(Element plate) {
    String storey = plate.identity().storey().map(s -> storeys.getOrDefault(s, "")).orElse("");
    return ROOF.matcher(storey).find()
        && surfaces.standing(plate.id()).map(s -> s.over().isEmpty()).orElse(false);
  }

  private Optional<Element> lyingOn(Element plate) {
    return surfaces
        .standing(plate.id())
        .flatMap(s -> s.over().filter(o -> near(s, o)))
        .map(o -> plates.get(o.plate()))
        .filter(e -> e instanceof Slab);
  }

  private static boolean near(Standing s, Standing.Level over) {
    return over.height().metres() <= s.high().metres() + ON_IT_M;
  }
}
