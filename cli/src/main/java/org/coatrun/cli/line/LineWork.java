package org.coatrun.cli.line;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.coatrun.shared.bid.Bid;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.Thickness;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.surface.Extent;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/**
 * What has to be sprayed, piece by piece: members along their middle lines, decks in strips.
 *
 * <p>Coating is exposed area by thickness: the bid's thickness where there is one, else a nominal
 * inch, which a finding says. What needs no coating, or has no face to coat, makes no piece.
 *
 * @param pieces in the order of the takeoff
 * @param findings what was assumed
 */
public record LineWork(List<WorkPiece> pieces, List<Finding> findings) {

  /** Without a job: the nominal thickness (our own choice; only ratios of volumes matter then). */
  static final Length NOMINAL = Length.ofInches(1);

  public LineWork {
    pieces = List.copyOf(pieces);
    findings = List.copyOf(findings);
  }

  /** Work of a takeoff without a job: every member that counts, no deck. */
  public static LineWork nominal(Takeoff takeoff) {
    return new Gatherer(takeoff, Optional.empty(), false).gather();
  }

  /** Work of a bid. */
  public static LineWork of(Takeoff takeoff, Bid bid) {
    return new Gatherer(takeoff, Optional.of(bid), bid.job().deck().spray()).gather();
  }

  private static final class Gatherer {
    private final Takeoff takeoff;
    private final Optional<Bid> bid;
    private final boolean decks;
    private final Map<ElementId, RatedLine> rated = new HashMap<>();
    private final List<WorkPiece> pieces = new ArrayList<>();
    private int nominal;

    Gatherer(Takeoff takeoff, Optional<Bid> bid, boolean decks) {
      this.takeoff = takeoff;
      this.bid = bid;
      this.decks = decks;
      bid.ifPresent(b -> b.lines().forEach(l -> rated.put(l.item().id(), l)));
    }

    LineWork gather() {
      takeoff.members().forEach(this::member);
      if (decks) {
        takeoff.decks().forEach(line -> deck(line, line.deck()));
      }
      return new LineWork(pieces, findings());
    }

    private void member(MemberLine line) {
      Optional<Extent> extent = takeoff.surfaces().extent(line.identity().id());
      Volume coating = coating(line);
      if (extent.isPresent() && coating.cubicMetres() > 0) {
        Extent e = extent.get();
        pieces.add(
            new WorkPiece(
                called(line.identity()),
                line.identity().guid(),
                e.from(),
                e.to(),
                Length.ofMetres(e.depth()),
                coating));
      }
    }

    private void deck(Line line, Deck deck) {
      Optional<Extent> extent = takeoff.surfaces().extent(deck.id());
      Volume coating = coating(line);
      if (extent.isPresent() && coating.cubicMetres() > 0) {
        pieces.addAll(
            DeckStrips.of(called(line.identity()), line.identity().guid(), extent.get(), coating));
      }
    }

    private Volume coating(Line line) {
      Optional<Quantities> measured = line.outcome().quantities();
      if (measured.isEmpty()) {
        return Volume.ofCubicMetres(0);
      }
      double area = measured.get().ledger().exposed().squareMetres();
      double thickness = thickness(line.identity().id(), area);
      return Volume.ofCubicMetres(Math.max(0, area) * thickness);
    }

    /** A thickness that is missing is no reason to leave the steel out of the line. */
    private double thickness(ElementId id, double area) {
      RatedLine line = rated.get(id);
      if (bid.isPresent() && (line == null || line.thickness() instanceof Thickness.NotNeeded)) {
        return 0;
      }
      Optional<Length> given = line == null ? Optional.empty() : line.thickness().spray();
      if (given.isEmpty() && area > 0) {
        nominal++;
      }
      return given.orElse(NOMINAL).metres();
    }

    private List<Finding> findings() {
      if (nominal == 0) {
        return List.of();
      }
      return List.of(
          Finding.of(
              LineFinding.NOMINAL_THICKNESS,
              String.format(
                  Locale.ROOT,
                  "%d of %d pieces of work are planned at %.0f in.",
                  nominal,
                  pieces.size(),
                  NOMINAL.inches())));
    }
  }

  static String called(Identity i) {
    if (!i.mark().isBlank()) {
      return i.mark();
    }
    if (!i.name().isBlank()) {
      return i.name();
    }
    return i.guid().isBlank() ? "#" + i.id().step() : i.guid();
  }
}
