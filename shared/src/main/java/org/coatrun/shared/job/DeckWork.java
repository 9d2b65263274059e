package org.coatrun.shared.job;

import java.util.Optional;
import org.coatrun.shared.rules.DeckGeometry;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.yaml.Key;

/** Whether deck is sprayed, and what it is like where the model draws it flat. */
public record DeckWork(
    @Key(
            note = "yes: coat the deck as well; often concrete alone carries its rating",
            fallback = "no")
        boolean spray,
    @Key(note = "fill the flutes above beams that run across them", fallback = "yes")
        boolean fillFlutes,
    @Key(note = "rating; not stated: Table 601", least = "0 h", most = "4 h")
        Optional<FireDuration> hours,
    @Key(note = "thickness; not stated: the listing", least = "1/8 in", most = "6 in")
        Optional<Length> thickness,
    @Key(
            note = "depth of the flutes, for decks drawn flat [common practice]",
            fallback = "3 in",
            least = "1/2 in",
            most = "12 in")
        Length depth,
    @Key(
            note = "from flute to flute [common practice]",
            fallback = "12 in",
            least = "1 in",
            most = "36 in")
        Length pitch,
    @Key(
            note = "width of a rib at its top [common practice]",
            fallback = "7-1/4 in",
            least = "1/4 in",
            most = "36 in")
        Length topOpening,
    @Key(
            note = "width of a rib at its bottom [common practice]",
            fallback = "4-3/4 in",
            least = "1/4 in",
            most = "36 in")
        Length bottomWidth,
    @Key(note = "the sheet is galvanised [common practice]", fallback = "yes") boolean galvanised,
    @Key(note = "the deck is cellular", fallback = "no") boolean cellular,
    @Key(note = "roof deck carries concrete", fallback = "no") boolean concreteOnRoofDeck) {

  /**
   * @throws IllegalArgumentException where the profile cannot be
   */
  public DeckWork {
    DeckGeometry checked = new DeckGeometry(depth, pitch, topOpening, bottomWidth);
    pitch = checked.pitch();
  }

  /** The profile for decks that the model draws flat. */
  public DeckGeometry profile() {
    return new DeckGeometry(depth, pitch, topOpening, bottomWidth);
  }
}
