package org.coatrun.shared.bid.material;

import java.util.Optional;
import org.coatrun.shared.bid.Coated;
import org.coatrun.shared.bid.CoatedDeck;
import org.coatrun.shared.bid.CoatedMember;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.job.DeckWork;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.job.VolumeBasis;
import org.coatrun.shared.rules.Bags;
import org.coatrun.shared.rules.BondingCoat;
import org.coatrun.shared.rules.CoatVolume;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Share;
import org.coatrun.shared.units.Volume;

/**
 * Counts the material of one element by a job.
 *
 * <p>The true volume of a member is exposed x t + k t2 x length (k of {@link CoatVolume}); that of
 * a deck drawn flat takes k from the job's profile.
 */
final class MaterialCount {

  private final Job job;

  MaterialCount(Job job) {
    this.job = job;
  }

  /** The material of an element; empty where no thickness is to be sprayed. */
  Optional<MaterialLine> of(RatedLine line) {
    return line.thickness().spray().map(thickness -> count(line, thickness));
  }

  private MaterialLine count(RatedLine line, Length thickness) {
    Coated item = line.item();
    CoatKind kind = CoatKind.of(item);
    Area bare = bare(item);
    double attachments = item instanceof CoatedMember ? 1 + allowance() : 1;
    Area area = Grid.of(bare.times(attachments));
    Volume fill = Grid.of(fluteFill(item));
    Volume byArea = Grid.of(CoatVolume.byArea(area, thickness)).plus(fill);
    Optional<Volume> byOffset =
        corners(item, thickness)
            .map(c -> CoatVolume.byArea(bare, thickness).plus(c).times(attachments))
            .map(v -> v.cubicMetres() < 0 ? Volume.ZERO : Grid.of(v))
            .map(v -> v.plus(fill));
    Volume inPlace =
        job.material().order() == VolumeBasis.OFFSET ? byOffset.orElse(byArea) : byArea;
    Share waste = kind.waste(job.material().waste());
    return new MaterialLine(
        line,
        kind,
        area,
        thickness,
        fill,
        byArea,
        byOffset,
        inPlace,
        waste,
        Grid.of(Bags.withWaste(inPlace, waste)),
        bonding(item, area));
  }

  private double allowance() {
    return job.exposure().attachmentAllowance().fraction();
  }

  /** Deck unfolded; steel without the flange that the fill of drawn flutes covers. */
  private Area bare(Coated item) {
    if (item instanceof CoatedDeck deck && deck.flat()) {
      return deck.exposed().times(job.deck().profile().areaFactor());
    }
    if (item instanceof CoatedMember member && job.deck().fillFlutes()) {
      Area open = member.exposed().minus(member.voidFlange());
      return open.compareTo(Area.ZERO) < 0 ? Area.ZERO : open;
    }
    return item.exposed();
  }

  /** What corners add or save: k t2 along the length. */
  private Optional<Volume> corners(Coated item, Length thickness) {
    Area square = thickness.times(thickness);
    if (item instanceof CoatedMember member) {
      return member.cornerFactor().map(k -> member.length().times(k)).map(square::times);
    }
    CoatedDeck deck = (CoatedDeck) item;
    return deck.flat() ? Optional.of(square.times(alongFlutes(deck))) : Optional.empty();
  }

  /** Length of all flutes, times k of one pitch. */
  private Length alongFlutes(CoatedDeck deck) {
    double flutes = deck.exposed().squareMetres() / job.deck().profile().pitch().metres();
    return Length.ofMetres(flutes * job.deck().profile().cornerFactor());
  }

  private Volume fluteFill(Coated item) {
    return item instanceof CoatedMember member && job.deck().fillFlutes()
        ? member.fluteBed().times(job.deck().profile().voidDepth()).plus(member.fluteVoids())
        : Volume.ZERO;
  }

  private Area bonding(Coated item, Area area) {
    DeckWork work = job.deck();
    boolean needed =
        item instanceof CoatedDeck deck
            && BondingCoat.needed(work.galvanised(), work.cellular(), concreteOn(deck, work));
    return needed ? area : Area.ZERO;
  }

  /** Decks of floors carry concrete whether the model shows it or not; roof deck may not. */
  private static boolean concreteOn(CoatedDeck deck, DeckWork work) {
    return deck.concreteAbove() || !deck.place().roof() || work.concreteOnRoofDeck();
  }
}
