package org.coatrun.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.coatrun.shared.bid.Bid;
import org.coatrun.shared.bid.amounts.BasisLine;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.bid.amounts.JobBasis;
import org.coatrun.shared.job.SubstanceRule;
import org.coatrun.shared.listing.Listing;

/** What decided hours, thickness and place, each rule with its source. */
final class BidBasis {

  private static final String NO_JOB =
      "No job file was given: hours and thickness are left open. model_fire_rating is what the model"
          + " states. 'coatrun job MODEL' prints a job file to begin with.";

  private static final List<String> PLACE =
      List.of(
          "working_floor: the highest slab or deck under an element's foot at its middle, named by the"
              + " storey within 0.6 m of its top; where none lies within 6 m, also those within 1 m"
              + " of the middle; without slabs, the storey's own height [common practice].",
          "A column that passes floors is sprayed from each of them, area and length by height; its"
              + " hours are decided once, and its working floors stand side by side.",
          "height_above_floor_m: the element's highest point above the top of its working floor.",
          "room: the room that the element's middle lies in, or above where the room's ceiling is"
              + " lower.");

  private static final List<String> RULES =
      List.of(
          "hours: by construction type, primary frame, floor or roof [IBC Table 601]; primary are"
              + " columns and what has a direct connection to one, unknown counts as primary"
              + " [IBC 202]. Rules of the job file win over the table, the last that matches first.",
          "Roof: slabs and decks that the model calls roof, a sheet by the slab on it, else those on a"
              + " storey called roof with nothing above. A member is of the roof where all that it"
              + " carries, by contact and by the frame, is roof. A frame that supports only a roof"
              + " has one hour less in types I-A and I-B [IBC Table 601, footnote a]; roofs 20 ft or"
              + " more above the floor below need none but in groups F-1, H, M and S-1 [footnote b].",
          "thickness: as the job file states it; else from the first listing that has it, by its"
              + " tables, linear between tested rows and never beyond them [EN 13381-4, common"
              + " practice]; then by substitution of beams [IBC 722.5.2.2] or the equation for"
              + " columns [IBC 722.5.1.3] or tubes, within the tested range. An entry for more hours"
              + " holds for fewer, an unrestrained one where restrained would do.",
          "thickness_mm: rounded up as the listing says, not under its least thickness; 0 where none"
              + " is needed, empty where none can be given (thickness_reason).",
          "Plates without a section factor take the thickness of the member they are on, the greatest"
              + " of several, at their own hours [common practice].",
          "Compact: an I whose profile the model states, at 50 ksi [AISC 360 Table B4.1b].");

  private static final List<String> GROUPS =
      List.of("project", "units", "building", "exposure", "listings", "thickness");

  private BidBasis() {}

  static List<String> of(Results results) {
    List<String> lines = new ArrayList<>(PLACE);
    if (results.bid().isEmpty()) {
      lines.add(NO_JOB);
      return lines;
    }
    Bid bid = results.bid().get();
    lines.addAll(RULES);
    substances(bid.job().substances(), lines);
    bid.listings().forEach(listing -> lines.add(listing(listing)));
    decided(bid).forEach((by, count) -> lines.add("Hours decided by " + by + ": " + count + "."));
    JobBasis.of(bid.job(), GROUPS).stream().map(BasisLine::sentence).forEach(lines::add);
    results.amounts().map(BidAmounts::basis).orElse(List.of()).stream()
        .map(BasisLine::sentence)
        .forEach(lines::add);
    return lines;
  }

  private static void substances(List<SubstanceRule> rules, List<String> lines) {
    for (int i = 0; i < rules.size(); i++) {
      lines.add(
          "Rule "
              + (i + 1)
              + " of substances: "
              + (rules.get(i).steel() ? "steel" : "not steel")
              + rules.get(i).reason().map(r -> ", " + r).orElse("")
              + " [job file].");
    }
  }

  private static Map<String, String> decided(Bid bid) {
    return bid.lines().stream()
        .collect(
            Collectors.groupingBy(
                line -> line.ruling().decidedBy(),
                TreeMap::new,
                Collectors.collectingAndThen(
                    Collectors.mapping(line -> line.item().id(), Collectors.toSet()),
                    ids -> Words.count(ids.size(), "element", "elements"))));
  }

  private static String listing(Listing listing) {
    return "Listing "
        + listing.name()
        + ", "
        + listing.source()
        + (listing.demonstration() ? ". " + Listing.DEMONSTRATION : ".");
  }
}
