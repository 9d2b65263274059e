package org.coatrun.cli.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.surface.Cover;

/** Finds by number what an element is called, and the file that it stands in. */
final class Sources {

  private final Building building;
  private final Map<ElementId, Identity> identities = new HashMap<>();

  Sources(Building building) {
    this.building = building;
    List<Element> all = new ArrayList<>(building.members());
    all.addAll(building.decks());
    all.addAll(building.slabs());
    all.addAll(building.walls());
    all.addAll(building.bulks());
    all.addAll(building.stairs());
    all.forEach(element -> identities.put(element.id(), element.identity()));
  }

  /** The name of the file that an element stands in, or empty. */
  String file(ElementId id) {
    return building.fileName(id);
  }

  /** GlobalIds of what covers an element, or #n where it has none, with blanks between. */
  String coveredBy(List<Cover> covers) {
    SortedSet<ElementId> by = new TreeSet<>();
    for (Cover cover : covers) {
      by.add(cover.by());
    }
    StringBuilder text = new StringBuilder();
    for (ElementId id : by) {
      text.append(text.isEmpty() ? "" : " ").append(handle(id));
    }
    return text.toString();
  }

  private String handle(ElementId id) {
    Identity identity = identities.get(id);
    return identity == null || identity.guid().isEmpty() ? "#" + id.step() : identity.guid();
  }
}
