package org.coatrun.shared.bid;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.listing.ListedDeck;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.listing.Restraint;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;

/**
 * Finds the thickness of each element: stated outright, or from the first listing that has it, by
 * table, then by substitution or equation.
 */
final class ThicknessFinder {

  static final String NO_LISTING = "the job file names no listing";

  private static final double SAME_M = 1e-9;

  private final Job job;
  private final List<Listing> listings;

  ThicknessFinder(Job job, List<Listing> listings) {
    this.job = job;
    this.listings = List.copyOf(listings);
  }

  /**
   * The thickness of an element by its ruling.
   *
   * @param hosts where it is a plate, the members it is on, which lend it kind and section factor
   */
  Thickness of(Coated item, Ruling ruling, List<CoatedMember> hosts) {
    if (ruling.bare().isPresent()) {
      return new Thickness.NotNeeded("it is left bare by " + ruling.bare().get());
    }
    Optional<FireDuration> hours = ruling.hours();
    if (hours.isPresent() && !(hours.get().minutes() > 0)) {
      return new Thickness.NotNeeded("0 h: no rating is asked of it");
    }
    if (ruling.thickness().isPresent()) {
      StatedThickness outright = ruling.thickness().get();
      return stated(outright.thickness(), "stated by " + outright.by());
    }
    if (hours.isEmpty()) {
      return new Thickness.Missing(WorkFinding.NO_HOURS, "no hours are stated for it");
    }
    Rating rating = new Rating(hours.get(), ruling.restrained());
    return item instanceof CoatedMember member
        ? member(member, rating, ruling, hosts)
        : deck(rating, ruling);
  }

  private Thickness member(
      CoatedMember member, Rating rating, Ruling ruling, List<CoatedMember> hosts) {
    Optional<Length> fallback = job.thickness().withoutFactor();
    if (member.byArea().isPresent()) {
      return listed(member, rating, ruling);
    }
    if (fallback.isPresent()) {
      return stated(fallback.get(), "it has no section factor: thickness.without-factor");
    }
    return hosts.isEmpty() ? listed(member, rating, ruling) : onHosts(hosts, rating, ruling);
  }

  /** Of the members that a plate is on, the thickest at the plate's own hours. */
  private Thickness onHosts(List<CoatedMember> hosts, Rating rating, Ruling ruling) {
    Thickness most = null;
    for (CoatedMember host : hosts) {
      Thickness t = onHost(host, listed(host, rating, ruling));
      if (most == null || inches(t) > inches(most)) {
        most = t;
      }
    }
    return most;
  }

  private static double inches(Thickness t) {
    return t.spray().map(Length::inches).orElse(-1.0);
  }

  private static Thickness onHost(CoatedMember host, Thickness t) {
    String on = "as " + host.called() + ", which it is on (common practice): ";
    if (t instanceof Thickness.Given g) {
      return new Thickness.Given(
          g.exact(), g.design(), g.listing(), g.demonstration(), on + g.reason());
    }
    return t instanceof Thickness.Missing m ? new Thickness.Missing(m.code(), on + m.reason()) : t;
  }

  private Thickness listed(CoatedMember member, Rating rating, Ruling ruling) {
    Attempt best = new Attempt.Failed(WorkFinding.NO_LISTING_ENTRY, noEntry(ruling, rating));
    for (Listing listing : named(ruling)) {
      Attempt here =
          new TableWay(listing, job.thickness().criticalTemperature())
              .thickness(member, rating)
              .or(new FormulaWay(listing).thickness(member, rating));
      if (here instanceof Attempt.Found found) {
        return given(listing, found.exact(), found.reason());
      }
      best = best.or(here);
    }
    return missing((Attempt.Failed) best);
  }

  private Thickness deck(Rating rating, Ruling ruling) {
    for (Listing listing : named(ruling)) {
      List<ListedDeck> fit =
          listing.decks().stream()
              .filter(d -> rating.serves(d.restraint()))
              .sorted(Comparator.comparing(d -> d.restraint() != Restraint.RESTRAINED))
              .toList();
      List<ListedDeck> decks = rating.fewest(fit, ListedDeck::hours);
      if (!decks.isEmpty()) {
        ListedDeck deck = decks.get(0);
        return given(
            listing,
            deck.thickness(),
            Shown.thickness(deck.thickness(), listing)
                + " of "
                + listing.name()
                + " for deck, "
                + rating.listed(deck.hours()));
      }
    }
    return new Thickness.Missing(WorkFinding.NO_LISTING_ENTRY, noEntry(ruling, rating));
  }

  private List<Listing> named(Ruling ruling) {
    return ruling
        .listing()
        .map(name -> listings.stream().filter(l -> l.name().equals(name)).toList())
        .orElse(listings);
  }

  private String noEntry(Ruling ruling, Rating rating) {
    String which = ruling.listing().map(n -> "listing " + n).orElse("no listing");
    if (listings.isEmpty()) {
      return NO_LISTING;
    }
    return which
        + (ruling.listing().isPresent() ? " has no entry for it at " : " has an entry for it at ")
        + Shown.hours(rating.hours());
  }

  private static Thickness missing(Attempt.Failed failed) {
    return new Thickness.Missing(failed.code(), failed.reason());
  }

  private static Thickness stated(Length thickness, String reason) {
    return new Thickness.Given(thickness, thickness, "", false, reason);
  }

  private static Thickness given(Listing listing, Length exact, String reason) {
    Length design = listing.rounding().up(exact);
    StringBuilder words = new StringBuilder(reason);
    if (design.minus(exact).metres() > SAME_M) {
      words.append(", rounded ").append(listing.rounding().word()).append(": ");
      words.append(Shown.thickness(design, listing));
    }
    Length least = listing.minimumThickness();
    if (design.compareTo(least) < 0) {
      words.append("; the least thickness, ").append(Shown.thickness(least, listing));
      words.append(", governs");
      design = least;
    }
    return new Thickness.Given(
        exact, design, listing.name(), listing.demonstration(), words.toString());
  }
}
