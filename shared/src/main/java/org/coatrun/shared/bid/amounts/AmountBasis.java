package org.coatrun.shared.bid.amounts;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.bid.inspection.InspectionPlan;
import org.coatrun.shared.bid.material.MaterialSum;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.rules.Numbers;

/** What the amounts go by: rules first, then the values of the job. */
final class AmountBasis {

  private static final String PRACTICE = "common practice";
  private static final String GEOMETRY = "geometry";
  private static final String OWN = "the program's own choice";

  private static final List<String> GROUPS =
      List.of(
          "exposure.attachment-allowance",
          "deck",
          "material",
          "machine.rate",
          "machine.machines",
          "labour",
          "prices",
          "programme",
          "cold",
          "inspection");

  private AmountBasis() {}

  static List<BasisLine> of(
      Job job, MaterialSum total, InspectionPlan inspection, boolean temperatures) {
    List<BasisLine> lines = new ArrayList<>();
    material(lines);
    volumes(lines, total);
    labour(lines);
    programme(lines, temperatures);
    inspection(lines, inspection);
    lines.addAll(JobBasis.of(job, GROUPS));
    return List.copyOf(lines);
  }

  private static void material(List<BasisLine> lines) {
    add(lines, "A board foot is one square foot, one inch thick.", PRACTICE);
    add(
        lines,
        "The true volume is area x thickness, and k x thickness squared along each member for its"
            + " corners; where corners are not known it is area x thickness.",
        GEOMETRY);
    add(
        lines,
        "Where deck.fill-flutes is yes, flutes above steel are filled under deck that the model"
            + " draws flat, by the mean depth of the voids of the job's profile. They run across"
            + " the steel that lies as most of the steel under the same deck. Of flutes that the"
            + " model draws the voids themselves are filled (flute_voids_m3), and the flange under"
            + " them takes no other coat.",
        OWN);
    add(lines, "The allowance for attachments goes on steel, not on deck.", OWN);
    add(lines, "Theoretical yield of a bag is its weight x 12 / density in place.", PRACTICE);
    add(lines, "Waste is a share of what is sprayed: in place / (1 - waste).", PRACTICE);
    add(
        lines,
        "Bags, pallets, trucks and gallons are whole for the job; those of floors are fractions.",
        OWN);
    add(lines, "Water weighs 8.34 lb a gallon.", PRACTICE);
    add(
        lines,
        "A bonding coat goes on sprayed galvanised roof deck without concrete and on galvanised"
            + " cellular deck.",
        PRACTICE);
  }

  private static void volumes(List<BasisLine> lines, MaterialSum total) {
    double area = total.byArea().boardFeet();
    if (area > 0) {
      double more = 100 * (total.byOffset().boardFeet() / area - 1);
      add(
          lines,
          "Of this job the true volume is "
              + Numbers.plain(Math.abs(more))
              + (more < 0 ? " % less" : " % more")
              + " than area x thickness; material.order says which of the two is ordered.",
          "this job");
    }
  }

  private static void labour(List<BasisLine> lines) {
    add(
        lines,
        "Crew hours are board feet by area x thickness over the rate of the kind, times the factor"
            + " of the height band that its highest point lies in.",
        PRACTICE);
    add(
        lines,
        "Where the machine gives fewer bags an hour than the crew would spray, the crew waits for"
            + " it, and the hours are paid.",
        OWN);
    add(lines, "Days of lift or scaffold are whole on each floor.", OWN);
    add(lines, "Each item of cost is rounded to a hundredth; sums add what is printed.", OWN);
  }

  private static void programme(List<BasisLine> lines, boolean temperatures) {
    add(
        lines,
        "All machines work on one floor; a floor begins in the hour in which the one before it is"
            + " done. Holidays are not known.",
        OWN);
    add(
        lines,
        "Deliveries come on working days, as late as lead time and trucks of a day allow, each"
            + " truck as full as room and shelf life allow. With a lead time trucks unload when the"
            + " day's work is done, without one before it begins. Bags are used in the order they"
            + " came.",
        OWN);
    add(
        lines,
        temperatures
            ? "Working days are judged by the temperature file; work begins at 7 in the morning."
            : "No temperatures are given: the cold-weather rule is stated, not judged.",
        PRACTICE);
  }

  private static void inspection(List<BasisLine> lines, InspectionPlan inspection) {
    add(
        lines,
        "Members are drawn on each floor from each kind, the share rounded up.",
        "IBC 1705.15 (25 % of the members of a floor); by kind: " + OWN);
    add(
        lines,
        "Reading places at each end of a 12 in length: beam 9, joist or truss 7, wide-flange column"
            + " 12, hollow column 4.",
        "IBC 2018 1705.14.4.6 to .9");
    add(
        lines,
        "Four readings on deck for each 1,000 ft2 or part of it.",
        "IBC 1705.15 (1705.14.4.2 of 2018)");
    add(
        lines,
        "One density and one bond sample for each 2,500 ft2 of sprayed deck, and of floor for each"
            + " kind of member; a floor of unknown area takes one of each kind.",
        "IBC 1705.15, from memory");
    add(lines, "Which places are read around a member is named by us.", PRACTICE);
    inspection
        .leastBond()
        .ifPresentOrElse(
            bond ->
                add(
                    lines,
                    "Bond of at least " + Numbers.plain(bond.psf()) + " psf.",
                    "IBC 1705.15 and Table 403.2.4, by the height of the building"),
            () -> add(lines, "The least bond is not known: no height is.", "IBC Table 403.2.4"));
  }

  private static void add(List<BasisLine> lines, String sentence, String source) {
    lines.add(BasisLine.rule(sentence, source));
  }
}
