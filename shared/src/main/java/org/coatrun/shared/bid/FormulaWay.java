package org.coatrun.shared.bid;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.listing.ListedBeam;
import org.coatrun.shared.listing.ListedEquation;
import org.coatrun.shared.listing.ListedHollow;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.listing.Restraint;
import org.coatrun.shared.rules.BeamSubstitution;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.rules.Numbers;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.SectionFactor;

/** Thickness from the tested beams and the equations of a listing, within their limits. */
final class FormulaWay {

  private static final Attempt NONE =
      new Attempt.Failed(WorkFinding.NO_LISTING_ENTRY, "no equation");

  private final Listing listing;

  FormulaWay(Listing listing) {
    this.listing = listing;
  }

  /** By substitution for beams, by the equations for columns and tubes. */
  Attempt thickness(CoatedMember member, Rating rating) {
    Attempt best = NONE;
    if (member.kind() == MemberKind.BEAM) {
      best = substitution(member, rating);
    }
    for (ListedEquation e : listing.columnEquations()) {
      if (e.kinds().contains(member.kind()) && covers(e.fromHours(), e.toHours(), rating)) {
        best = best.or(column(e, member, rating));
      }
    }
    for (ListedHollow e : listing.hollowEquations()) {
      if (member.kind() == MemberKind.HOLLOW_COLUMN && covers(e.fromHours(), e.toHours(), rating)) {
        best = best.or(hollow(e, member, rating));
      }
    }
    return best;
  }

  private static boolean covers(FireDuration from, FireDuration to, Rating rating) {
    return rating.hours().compareTo(from) >= 0 && rating.hours().compareTo(to) <= 0;
  }

  private Attempt substitution(CoatedMember member, Rating rating) {
    List<ListedBeam> fit =
        listing.beams().stream().filter(b -> rating.serves(b.restraint())).toList();
    List<ListedBeam> beams = rating.fewest(fit, ListedBeam::hours);
    if (beams.isEmpty()) {
      return NONE;
    }
    if (member.byWeight().isEmpty()) {
      return noFactor("W/D");
    }
    SectionFactor factor = member.byWeight().get();
    Attempt best = NONE;
    for (ListedBeam beam : nearest(beams, factor)) {
      best = best.or(substituted(beam, member, rating, factor));
    }
    return best;
  }

  /** Restrained beams first, then the nearest in W/D. */
  private static List<ListedBeam> nearest(List<ListedBeam> beams, SectionFactor factor) {
    return beams.stream()
        .sorted(
            Comparator.comparing((ListedBeam b) -> b.restraint() != Restraint.RESTRAINED)
                .thenComparingDouble(b -> Math.abs(b.factor() - factor.weightOverPerimeter())))
        .toList();
  }

  private Attempt substituted(
      ListedBeam beam, CoatedMember member, Rating rating, SectionFactor factor) {
    boolean restrained = beam.restraint() == Restraint.RESTRAINED;
    BeamSubstitution.Outcome outcome =
        BeamSubstitution.thickness(
            beam.thickness(),
            beam.sectionFactor(),
            new BeamSubstitution.InHand(factor, rating.hours(), restrained, member.compact()));
    String listed = " for the listed " + beam.section() + " of " + listing.name() + ", ";
    String entry = listed + rating.listed(beam.hours()) + (restrained ? ", restrained" : "");
    if (outcome instanceof BeamSubstitution.Outcome.Refused refused) {
      return new Attempt.Failed(
          WorkFinding.SUBSTITUTION_REFUSED, "no substitution" + entry + ": " + refused.reason());
    }
    BeamSubstitution.Outcome.Allowed allowed = (BeamSubstitution.Outcome.Allowed) outcome;
    return new Attempt.Found(allowed.thickness(), allowed.formula() + entry);
  }

  private Attempt column(ListedEquation e, CoatedMember member, Rating rating) {
    if (member.byWeight().isEmpty()) {
      return noFactor("W/D");
    }
    SectionFactor factor = member.byWeight().get();
    Optional<Length> thickness = e.equation().thickness(factor, rating.hours());
    return thickness.isPresent()
        ? found(thickness.get(), e.equation().filledIn(factor, rating.hours()))
        : outside("W/D", factor.weightOverPerimeter(), e.smallest(), e.largest());
  }

  private Attempt hollow(ListedHollow e, CoatedMember member, Rating rating) {
    if (member.byArea().isEmpty()) {
      return noFactor("A/P");
    }
    SectionFactor factor = member.byArea().get();
    Optional<Length> thickness = e.equation().thickness(factor, rating.hours());
    return thickness.isPresent()
        ? found(thickness.get(), e.equation().filledIn(factor, rating.hours()))
        : outside("A/P", factor.areaOverPerimeterInches(), e.smallest(), e.largest());
  }

  private Attempt found(Length thickness, String formula) {
    return new Attempt.Found(
        thickness,
        formula + " = " + Shown.exact(thickness, listing) + ", constants of " + listing.name());
  }

  private Attempt outside(String form, double value, double smallest, double largest) {
    return new Attempt.Failed(
        WorkFinding.OUTSIDE_TESTED_RANGE,
        String.format(
            Locale.ROOT,
            "%s %.3f lies outside %s to %s, for which the equation of %s was tested",
            form,
            value,
            Numbers.plain(smallest),
            Numbers.plain(largest),
            listing.name()));
  }

  private Attempt noFactor(String form) {
    return new Attempt.Failed(
        WorkFinding.NO_SECTION_FACTOR,
        "it has no " + form + " for the formulas of " + listing.name());
  }
}
