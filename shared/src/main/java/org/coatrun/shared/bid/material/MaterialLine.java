package org.coatrun.shared.bid.material;

import java.util.Locale;
import java.util.Optional;
import org.coatrun.shared.bid.Coated;
import org.coatrun.shared.bid.CoatedMember;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Share;
import org.coatrun.shared.units.Volume;

/**
 * What one element takes.
 *
 * @param rated the element, its hours and its thickness
 * @param area to be coated: exposed, deck unfolded, attachments allowed for
 * @param thickness to be sprayed
 * @param fluteFill what fills the flutes above it
 * @param byArea area by thickness, what the trade counts, and the fill
 * @param byOffset the true volume around its corners, and the fill; empty where its corners are not
 *     known
 * @param inPlace the one of the two that is ordered by
 * @param waste share of what is sprayed that is lost
 * @param sprayed what must be sprayed so that {@code inPlace} remains
 * @param bonding area that takes a bonding coat first, or zero
 */
public record MaterialLine(
    RatedLine rated,
    CoatKind kind,
    Area area,
    Length thickness,
    Volume fluteFill,
    Volume byArea,
    Optional<Volume> byOffset,
    Volume inPlace,
    Share waste,
    Volume sprayed,
    Area bonding) {

  /** The member or deck. */
  public Coated item() {
    return rated.item();
  }

  /** The floor that it is sprayed from. */
  public String floor() {
    return item().place().workingFloor();
  }

  /** Designation of its section, {@code deck}, or empty. */
  public String section() {
    return item().section();
  }

  /** What it does in the frame, in lower case, or {@code deck}. */
  public String role() {
    return item() instanceof CoatedMember m ? m.role().name().toLowerCase(Locale.ROOT) : "deck";
  }

  /** The rule or row that decided its hours. */
  public String rule() {
    return rated.ruling().decidedBy();
  }
}
