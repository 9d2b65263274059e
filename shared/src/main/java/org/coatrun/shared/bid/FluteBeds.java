package org.coatrun.shared.bid;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.coatrun.shared.estimate.DeckLine;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.surface.Surfaces;
import org.coatrun.shared.units.Area;

/**
 * Finds where flutes run across steel under deck that the model draws flat.
 *
 * <p>Deck spans from beam to beam, so its flutes run square to most of the steel that it lies on:
 * the direction of a deck's bearers is the mean of theirs by length, angles taken twice so that
 * both ways along a beam are one. Flutes run across what lies within 45 degrees of it, and across
 * all where the bearers have no direction in common.
 */
final class FluteBeds {

  /** Under this share of the whole length, bearers that lie square to each other cancel out. */
  private static final double NO_DIRECTION = 0.05;

  private final Surfaces surfaces;
  private final Set<ElementId> flat;
  private final Map<ElementId, Bearers> bearers = new HashMap<>();

  private FluteBeds(Surfaces surfaces, Set<ElementId> flat) {
    this.surfaces = surfaces;
    this.flat = flat;
  }

  static FluteBeds of(Takeoff takeoff) {
    Set<ElementId> flat = new HashSet<>();
    for (DeckLine line : takeoff.decks()) {
      if (isFlat(line.deck(), line.outcome().quantities())) {
        flat.add(line.deck().id());
      }
    }
    FluteBeds beds = new FluteBeds(takeoff.surfaces(), flat);
    for (MemberLine line : takeoff.members()) {
      line.outcome().quantities().ifPresent(q -> beds.bear(line.member().id(), q.covers()));
    }
    return beds;
  }

  /** Whether the model draws a deck without its flutes; where none looked, by its form. */
  static boolean isFlat(Deck deck, Optional<Quantities> measured) {
    return measured
        .flatMap(Quantities::soffit)
        .map(s -> !s.fluted())
        .orElse(deck.form() != Deck.Form.SHEET);
  }

  /** The area of a member's top that flutes run across. */
  Area bed(ElementId member, List<Cover> covers) {
    return covers.stream()
        .filter(this::isFlatDeck)
        .filter(cover -> across(member, cover.by()))
        .map(Cover::area)
        .reduce(Area.ZERO, Area::plus);
  }

  private void bear(ElementId member, List<Cover> covers) {
    Optional<Run> run = run(member);
    if (run.isPresent()) {
      covers.stream()
          .filter(this::isFlatDeck)
          .forEach(c -> bearers.computeIfAbsent(c.by(), deck -> new Bearers()).add(run.get()));
    }
  }

  private boolean isFlatDeck(Cover cover) {
    return cover.kind() == Cover.Kind.CONTACT && flat.contains(cover.by());
  }

  private boolean across(ElementId member, ElementId deck) {
    Bearers all = bearers.get(deck);
    return all == null || run(member).map(all::isAlong).orElse(true);
  }

  /** How a member runs in plan; empty where it stands upright, or its middle line is not known. */
  private Optional<Run> run(ElementId member) {
    return surfaces
        .extent(member)
        .filter(extent -> !extent.upright())
        .map(extent -> Run.of(extent.to().minus(extent.from())))
        .filter(run -> run.length() > 0);
  }

  /** A length in plan and twice the angle of its direction. */
  private record Run(double length, double doubled) {

    static Run of(Vec3 way) {
      return new Run(Math.hypot(way.x(), way.y()), 2 * Math.atan2(way.y(), way.x()));
    }
  }

  /** The steel that one deck lies on. */
  private static final class Bearers {
    private double x;
    private double y;
    private double length;

    void add(Run run) {
      x += run.length() * Math.cos(run.doubled());
      y += run.length() * Math.sin(run.doubled());
      length += run.length();
    }

    boolean isAlong(Run run) {
      boolean none = Math.hypot(x, y) < NO_DIRECTION * length;
      return none || x * Math.cos(run.doubled()) + y * Math.sin(run.doubled()) >= 0;
    }
  }
}
