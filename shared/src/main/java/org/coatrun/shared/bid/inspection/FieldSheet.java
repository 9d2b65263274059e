package org.coatrun.shared.bid.inspection;

import java.util.List;
import org.coatrun.shared.job.UnitSystem;
import org.coatrun.shared.rules.Numbers;
import org.coatrun.shared.units.Length;

/** Field sheets as they are handed out; {@link FieldSheetReader} reads them when they come back. */
public final class FieldSheet {

  /** Names of the columns. */
  public static final List<String> HEADER =
      List.of(
          "floor", "set", "guid", "name", "kind", "section", "end", "place", "where", "design",
          "least", "reading");

  private FieldSheet() {}

  /** The cells of a row, the reading blank, in the order of {@link #HEADER}. */
  public static List<String> cells(FieldRow row, UnitSystem units) {
    return List.of(
        row.floor(),
        Integer.toString(row.set()),
        row.guid(),
        row.name(),
        row.kind(),
        row.section(),
        Integer.toString(row.end()),
        Integer.toString(row.place()),
        row.where(),
        written(row.design(), units),
        written(row.least(), units),
        "");
  }

  /** A thickness with its unit: {@code 1-1/16 in} or {@code 27 mm}. */
  public static String written(Length thickness, UnitSystem units) {
    return units == UnitSystem.US
        ? Numbers.inches(thickness.inches()) + " in"
        : Numbers.plain(thickness.millimetres()) + " mm";
  }
}
