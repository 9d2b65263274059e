package org.coatrun.cli.report;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.coatrun.shared.bid.Bid;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.Thickness;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.units.Area;

/** Hours and thickness on the screen: area by what decided the hours. */
final class BidScreen {

  private BidScreen() {}

  static void print(PrintWriter out, Results results, UnitSystem units) {
    if (results.bid().isEmpty()) {
      out.println("Hours and thickness: none without --job.");
      out.println();
      return;
    }
    Bid bid = results.bid().get();
    TextTable table =
        new TextTable(
            1,
            "Hours decided by",
            "Elements",
            "To spray, " + units.areaUnit(),
            "No coat, " + units.areaUnit(),
            "Open, " + units.areaUnit());
    Map<String, List<RatedLine>> groups =
        bid.lines().stream()
            .collect(
                Collectors.groupingBy(
                    line -> line.ruling().decidedBy(), TreeMap::new, Collectors.toList()));
    groups.forEach((by, lines) -> row(table, shortly(by), lines, units));
    table.rule();
    row(table, "All", bid.lines(), units);
    table.print(out);
    if (bid.usesDemonstration()) {
      out.println(Listing.DEMONSTRATION);
    }
    out.println();
  }

  private static String shortly(String decidedBy) {
    return decidedBy
        .replace("IBC Table 601, type ", "Table 601 ")
        .replace(" construction and secondary members", " and secondary")
        .replace("primary structural frame", "primary frame");
  }

  private static void row(TextTable table, String name, List<RatedLine> lines, UnitSystem units) {
    table.row(
        name,
        Long.toString(lines.stream().map(line -> line.item().id()).distinct().count()),
        units.show(area(lines, Thickness.Given.class)),
        units.show(area(lines, Thickness.NotNeeded.class)),
        units.show(area(lines, Thickness.Missing.class)));
  }

  private static Area area(List<RatedLine> lines, Class<? extends Thickness> kind) {
    Area sum = Area.ZERO;
    for (RatedLine line : lines) {
      if (kind.isInstance(line.thickness())) {
        sum = sum.plus(line.item().exposed());
      }
    }
    return sum;
  }
}
