package org.coatrun.shared.bid.inspection;

import java.util.List;
import org.coatrun.shared.units.Length;

/**
 * A member or deck spot that must be sprayed again.
 *
 * @param lacking what its average lacks to the design, or zero
 * @param places under the least allowed, in words
 * @param reason which rules it fails and by how much, in a sentence
 */
public record Respray(
    String floor,
    int set,
    String guid,
    String name,
    String kind,
    Length design,
    Length lacking,
    List<String> places,
    String reason) {

  public Respray {
    places = List.copyOf(places);
  }
}
