package org.coatrun.ifcimport.read;

import java.util.List;
import org.coatrun.shared.model.Bulk;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Opening;
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Space;
import org.coatrun.shared.model.Stair;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.model.Wall;

/** What one file gives to the building. */
record FilePart(
    String buildingName,
    List<Storey> storeys,
    List<Member> members,
    List<Deck> decks,
    List<Slab> slabs,
    List<Wall> walls,
    List<Bulk> bulks,
    List<Stair> stairs,
    List<Space> spaces,
    List<Opening> openings) {}
