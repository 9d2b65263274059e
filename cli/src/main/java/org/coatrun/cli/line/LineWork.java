package org.coatrun.cli.line;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.coatrun.shared.bid.material.MaterialBill;
import org.coatrun.shared.estimate.DeckLine;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.line.Wording;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/**
 * What has to be sprayed, piece by piece: members along their middle lines, decks in strips.
 *
 * <p>With a job the coating is what its material bill has in place, so that line and bill tell the
 * same board feet; what must be coated and has no thickness is taken at a nominal inch, as all
 * steel is without a job, and a finding says so. What needs no coating, or has no face to coat,
 * makes no piece.
 *
 * @param pieces in the order of the takeoff, members before decks
 * @param nominal how many of them are planned at a nominal thickness
 */
public record LineWork(List<WorkPiece> pieces, int nominal) {

  /** Without a job: the nominal thickness (our own choice; only ratios of volumes matter then). */
  static final Length NOMINAL = Length.ofInches(1);

  public LineWork {
    pieces = List.copyOf(pieces);
  }

  /** Work of a takeoff without a job: every member that counts, no deck. */
  public static LineWork nominal(Takeoff takeoff) {
    var gatherer = new Gatherer();
    for (MemberLine line : takeoff.members()) {
      line.outcome()
          .quantities()
          .ifPresent(q -> gatherer.nominal(line.identity().id(), q.ledger().exposed()));
    }
    return gatherer.gather(takeoff);
  }

  /** Work of a bid: all that its material bill lists, decks too where they are coated. */
  public static LineWork of(Takeoff takeoff, MaterialBill bill) {
    var gatherer = new Gatherer();
    bill.lines().forEach(line -> gatherer.add(line.item().id(), line.inPlace()));
    bill.withoutThickness()
        .forEach(line -> gatherer.nominal(line.item().id(), line.item().exposed()));
    return gatherer.gather(takeoff);
  }

  /** What was assumed. */
  List<Finding> findings(Wording words) {
    if (nominal == 0) {
      return List.of();
    }
    String many = nominal + " of " + pieces.size();
    String sentence = many + " pieces of work are planned at " + words.width(NOMINAL) + ".";
    return List.of(Finding.of(LineFinding.NOMINAL_THICKNESS, sentence));
  }

  private static final class Gatherer {
    private final Map<ElementId, Volume> coatings = new HashMap<>();
    private final Set<ElementId> nominal = new HashSet<>();
    private final List<WorkPiece> pieces = new ArrayList<>();

    void add(ElementId id, Volume coating) {
      if (coating.cubicMetres() > 0) {
        coatings.merge(id, coating, Volume::plus);
      }
    }

    /** A thickness that is missing is no reason to leave the steel out of the line. */
    void nominal(ElementId id, Area exposed) {
      if (exposed.squareMetres() > 0) {
        nominal.add(id);
        add(id, Volume.ofCubicMetres(exposed.squareMetres() * NOMINAL.metres()));
      }
    }

    LineWork gather(Takeoff takeoff) {
      for (MemberLine line : takeoff.members()) {
        piece(takeoff, line).ifPresent(pieces::add);
      }
      for (DeckLine line : takeoff.decks()) {
        pieces.addAll(strips(takeoff, line));
      }
      return new LineWork(pieces, nominal.size());
    }

    private Optional<WorkPiece> piece(Takeoff takeoff, MemberLine line) {
      Identity who = line.identity();
      Volume coating = coatings.get(who.id());
      return coating == null
          ? Optional.empty()
          : takeoff
              .surfaces()
              .extent(who.id())
              .map(
                  e ->
                      new WorkPiece(
                          called(who),
                          who.guid(),
                          e.from(),
                          e.to(),
                          Length.ofMetres(e.depth()),
                          coating));
    }

    private List<WorkPiece> strips(Takeoff takeoff, DeckLine line) {
      Identity who = line.identity();
      Volume coating = coatings.get(who.id());
      return coating == null
          ? List.of()
          : takeoff
              .surfaces()
              .extent(who.id())
              .map(e -> DeckStrips.of(called(who), who.guid(), e, coating))
              .orElse(List.of());
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
