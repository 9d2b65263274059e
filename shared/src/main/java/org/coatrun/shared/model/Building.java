package org.coatrun.shared.model;

import java.util.List;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.shape.Vec3;

/**
 * All of a building that matters for coating its steel.
 *
 * @param origin what was taken off all placements, in metres, so that a model far from its origin
 *     keeps its precision
 * @param storeys from the lowest up
 * @param findings what the reader found amiss
 */
public record Building(
    String name,
    Vec3 origin,
    List<ModelFile> files,
    List<Storey> storeys,
    List<Member> members,
    List<Deck> decks,
    List<Slab> slabs,
    List<Wall> walls,
    List<Bulk> bulks,
    List<Stair> stairs,
    List<Space> spaces,
    List<Opening> openings,
    List<Finding> findings) {

  public Building {
    files = List.copyOf(files);
    storeys = List.copyOf(storeys);
    members = List.copyOf(members);
    decks = List.copyOf(decks);
    slabs = List.copyOf(slabs);
    walls = List.copyOf(walls);
    bulks = List.copyOf(bulks);
    stairs = List.copyOf(stairs);
    spaces = List.copyOf(spaces);
    openings = List.copyOf(openings);
    findings = List.copyOf(findings);
  }

  /** The name of the file that an element stands in, or empty. */
  public String fileName(ElementId id) {
    return id.file() < files.size() ? files.get(id.file()).name() : "";
  }
}
