package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Opening;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.Substance;

/**
 * What is measured, what only covers, and what only stands there. Members and walls of concrete,
 * masonry or unknown substance cover what touches or stands in them; light partitions come after
 * spraying and do not.
 *
 * @param measured steel members, fasteners and what counts as deck apart, and decks; sorted
 * @param covering what else may cover them; sorted
 * @param standing other members and walls, for a picture: light partitions, timber; sorted
 * @param openings by host
 */
record Subjects(
    List<Element> measured,
    List<Element> covering,
    List<Element> standing,
    Map<ElementId, List<Opening>> openings) {

  static Subjects of(Building building) {
    List<Element> measured = new ArrayList<>();
    List<Element> covering = new ArrayList<>();
    List<Element> standing = new ArrayList<>();
    Set<ElementId> decks = new HashSet<>();
    building.decks().forEach(d -> decks.add(d.id()));
    for (Member m : building.members()) {
      if (m.role() == Role.FASTENER || decks.contains(m.id())) {
        continue;
      }
      if (m.classification().isSteel()) {
        measured.add(m);
      } else {
        (covers(m.classification()) ? covering : standing).add(m);
      }
    }
    measured.addAll(building.decks());
    covering.addAll(building.slabs());
    building.walls().forEach(w -> (covers(w.classification()) ? covering : standing).add(w));
    building.bulks().stream().filter(b -> covers(b.classification())).forEach(covering::add);
    measured.sort(Comparator.comparing(Element::id));
    Set<ElementId> known = new HashSet<>();
    measured.forEach(e -> known.add(e.id()));
    sortUnknown(covering, known);
    sortUnknown(standing, known);
    return new Subjects(measured, covering, standing, openings(building));
  }

  /** Takes out what is known already, and sorts the rest. */
  private static void sortUnknown(List<Element> elements, Set<ElementId> known) {
    elements.removeIf(e -> !known.add(e.id()));
    elements.sort(Comparator.comparing(Element::id));
  }

  private static boolean covers(Classification c) {
    Substance s = c.substance();
    return s == Substance.STEEL
        || s == Substance.CONCRETE
        || s == Substance.MASONRY
        || s == Substance.UNKNOWN;
  }

  private static Map<ElementId, List<Opening>> openings(Building building) {
    Map<ElementId, List<Opening>> out = new HashMap<>();
    for (Opening o : building.openings()) {
      if (o.body().isPresent()) {
        out.computeIfAbsent(o.host(), k -> new ArrayList<>()).add(o);
      }
    }
    out.values().forEach(l -> l.sort(Comparator.comparing(Element::id)));
    return out;
  }

  List<Opening> openingsOf(Element element) {
    return openings.getOrDefault(element.id(), List.of());
  }
}
