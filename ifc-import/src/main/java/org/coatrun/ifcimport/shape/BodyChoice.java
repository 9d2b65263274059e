package org.coatrun.ifcimport.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.coatrun.ifcimport.entity.Entity;

/**
 * Which representation of an element is its body: the one whose identifier says so, on whatever
 * context; where none does, one of a kind that only bodies have. Axis, box, footprint and the like
 * never are. Of several the most detailed.
 */
final class BodyChoice {

  private static final Set<String> NEVER =
      Set.of(
          "axis",
          "box",
          "footprint",
          "plan",
          "annotation",
          "profile",
          "reference",
          "lighting",
          "clearance",
          "cog",
          "survey",
          "surface");

  /** How detailed each kind is; kinds that are not here have no body. */
  private static final Map<String, Integer> DETAIL =
      Map.ofEntries(
          Map.entry("advancedbrep", 9),
          Map.entry("csg", 8),
          Map.entry("clipping", 8),
          Map.entry("advancedsweptsolid", 7),
          Map.entry("sweptsolid", 6),
          Map.entry("solidmodel", 6),
          Map.entry("mappedrepresentation", 6),
          Map.entry("brep", 5),
          Map.entry("tessellation", 4),
          Map.entry("sectionedspine", 4),
          Map.entry("surfacemodel", 3),
          Map.entry("surface3d", 3),
          Map.entry("surface", 2));

  private BodyChoice() {}

  /** The representations that are bodies, best first. */
  static List<Entity> bodies(Entity productShape) {
    List<Entity> named = new ArrayList<>();
    List<Entity> likely = new ArrayList<>();
    for (Entity r : productShape.refs("Representations")) {
      String identifier = r.text("RepresentationIdentifier").trim().toLowerCase(Locale.ROOT);
      if (!r.isA("IfcRepresentation")
          || NEVER.contains(identifier)
          || r.refIds("Items").length == 0) {
        continue;
      }
      if (identifier.equals("body")) {
        named.add(r);
      } else if (detail(r) > 0) {
        likely.add(r);
      }
    }
    List<Entity> bodies = named.isEmpty() ? likely : named;
    if (bodies.size() > 1) {
      bodies.sort(Comparator.comparingInt(BodyChoice::rank).reversed());
    }
    return bodies;
  }

  private static int detail(Entity representation) {
    String kind = representation.text("RepresentationType").trim().toLowerCase(Locale.ROOT);
    return DETAIL.getOrDefault(kind, 0);
  }

  /** A model view goes before a sketch, then the more detailed kind. */
  private static int rank(Entity representation) {
    boolean modelView =
        representation
            .ref("ContextOfItems")
            .flatMap(c -> c.item("TargetView"))
            .map(v -> v.equals("MODEL_VIEW"))
            .orElse(true);
    return detail(representation) + (modelView ? 100 : 0);
  }
}
