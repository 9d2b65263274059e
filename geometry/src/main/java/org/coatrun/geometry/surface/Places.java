package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.place.Standings;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Tolerance;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Space;
import org.coatrun.shared.surface.Standing;

/** Says where members, decks and slabs stand among the floors and rooms of their building. */
final class Places {

  private Places() {}

  static List<Standing> of(Building building, Things.Result[] made) {
    var plates = new ArrayList<Thing>();
    var standing = new ArrayList<Thing>();
    for (Things.Result r : made) {
      if (r instanceof Things.Result.Made m) {
        boolean plate = isPlate(m.element());
        if (plate) {
          plates.add(m.thing());
        }
        if (plate || m.element() instanceof Member) {
          standing.add(m.thing());
        }
      }
    }
    return new Standings(plates, rooms(building)).of(standing);
  }

  /** One can stand on it and work; not so on the landing of a stair. */
  private static boolean isPlate(Element element) {
    return element instanceof Deck
        || (element instanceof Slab slab && slab.kind() != Slab.Kind.LANDING);
  }

  private static List<Thing> rooms(Building building) {
    var things = new Things(0);
    var kernel = new Kernel(Tolerance.DEFAULT);
    var rooms = new ArrayList<Thing>();
    for (Space space : building.spaces()) {
      if (things.of(space, List.of(), kernel) instanceof Things.Result.Made m) {
        rooms.add(m.thing());
      }
    }
    return rooms;
  }
}
