package org.coatrun.cli.workbook;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.coatrun.cli.spreadsheet.Cell;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.Style;
import org.coatrun.shared.bid.amounts.BasisLine;

/** The sheet of rules and values, each with where it comes from. */
final class BasisSheet {

  private BasisSheet() {}

  static Sheet of(List<String> meanings, List<BasisLine> lines) {
    SheetRows rows = new SheetRows("Basis");
    rows.add(Cell.text("Rules and values that the amounts go by", Style.TITLE));
    rows.head("what", "value", "source", "stated in the job file", "key of the job file");
    for (BasisLine line : lines) {
      rows.add(
          Cell.text(line.what(), Style.WRAPPED),
          Cell.text(line.value()),
          Cell.text(line.source(), Style.WRAPPED),
          Cell.text(line.key().isEmpty() ? "" : line.stated() ? "yes" : "no"),
          Cell.text(line.key()));
    }
    rows.title("What the numbers mean, and what decided them");
    Set<String> listed = lines.stream().map(BasisLine::sentence).collect(Collectors.toSet());
    meanings.stream()
        .filter(sentence -> !listed.contains(sentence))
        .forEach(sentence -> rows.add(Cell.text(sentence, Style.WRAPPED)));
    return rows.sheet(100, 24, 40, 12, 32);
  }
}
