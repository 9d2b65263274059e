package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.cli.report.Results;
import org.coatrun.shared.bid.CoatedSummary;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.Thickness;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.bid.labour.AccessWords;
import org.coatrun.shared.bid.labour.LabourLine;
import org.coatrun.shared.bid.material.MaterialLine;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.rules.Bags;
import org.coatrun.shared.units.Volume;

/** What a bid says of elements: hours, thickness, material and where it is sprayed from. */
final class BidCells {

  private static final String RATING = "Rating and thickness";
  private static final String MATERIAL = "Material";
  private static final String WORK = "Where it is sprayed from";

  private final Results results;
  private final Map<ElementId, List<MaterialLine>> material = new HashMap<>();
  private final Map<ElementId, LabourLine> labour = new HashMap<>();

  BidCells(Results results) {
    this.results = results;
    results
        .amounts()
        .ifPresent(
            a -> {
              a.material()
                  .lines()
                  .forEach(
                      l -> material.computeIfAbsent(l.item().id(), k -> new ArrayList<>()).add(l));
              a.labour().lines().forEach(l -> labour.put(l.material().item().id(), l));
            });
  }

  /** The columns that a bid adds; working floor and height stand without a job too. */
  static List<PageColumn> columns(boolean rated) {
    List<PageColumn> columns = new ArrayList<>();
    if (rated) {
      columns.add(PageColumn.number("hours", "Hours", "hours").filtered().sequence().under(RATING));
      columns.add(PageColumn.text("decidedBy", "Decided by").filtered().under(RATING));
      columns.add(PageColumn.text("hoursReason", "Why these hours").detailOnly().under(RATING));
      columns.add(
          PageColumn.number("thickness", "Thickness", "thickness")
              .filtered()
              .sequence()
              .under(RATING));
      columns.add(
          PageColumn.number("exact", "Before rounding", "exact").detailOnly().under(RATING));
      columns.add(
          PageColumn.text("thicknessReason", "How it was found").detailOnly().under(RATING));
      columns.add(PageColumn.text("listing", "Listing").detailOnly().under(RATING));
      columns.add(PageColumn.number("inPlace", "In place", "volume").summed().under(MATERIAL));
      columns.add(PageColumn.number("bags", "Bags, exact", "bags").summed().under(MATERIAL));
    }
    columns.add(PageColumn.text("workingFloor", "Working floor").filtered().under(WORK));
    columns.add(PageColumn.number("height", "Top above it", "length").detailOnly().under(WORK));
    columns.add(PageColumn.text("room", "Room").detailOnly().under(WORK));
    if (rated) {
      columns.add(PageColumn.text("access", "Reached by").filtered().detailOnly().under(WORK));
    }
    return columns;
  }

  /** Puts what is known of an element into its row. */
  void put(ElementId id, Map<String, Object> row) {
    results.rated(id).ifPresent(r -> rated(r, row));
    results.coated(id).ifPresent(c -> coated(c, row));
    results.amounts().ifPresent(a -> amounts(id, a, row));
  }

  private static void coated(CoatedSummary coated, Map<String, Object> row) {
    row.put("workingFloor", coated.floors());
    row.put("room", coated.room());
    coated.top().ifPresent(h -> row.put("height", h.metres()));
  }

  private static void rated(RatedLine rated, Map<String, Object> row) {
    rated.ruling().hours().ifPresent(h -> row.put("hours", h.hours()));
    row.put("decidedBy", rated.ruling().decidedBy());
    row.put("hoursReason", rated.ruling().reason());
    row.put("thicknessReason", rated.thickness().reason());
    if (rated.thickness() instanceof Thickness.Given given) {
      row.put("thickness", given.design().metres());
      row.put("exact", given.exact().metres());
      row.put(
          "listing",
          given.demonstration() ? given.listing() + " (DEMONSTRATION)" : given.listing());
    } else if (rated.thickness() instanceof Thickness.NotNeeded) {
      row.put("thickness", 0);
    }
  }

  private void amounts(ElementId id, BidAmounts amounts, Map<String, Object> row) {
    List<MaterialLine> lines = material.getOrDefault(id, List.of());
    if (!lines.isEmpty()) {
      Volume yield = amounts.order().theoreticalYield();
      row.put("inPlace", lines.stream().mapToDouble(l -> l.inPlace().cubicMetres()).sum());
      row.put("bags", lines.stream().mapToDouble(l -> Bags.exact(l.sprayed(), yield)).sum());
    }
    LabourLine line = labour.get(id);
    if (line != null) {
      row.put("access", AccessWords.of(line.reach().access()));
    }
  }
}
