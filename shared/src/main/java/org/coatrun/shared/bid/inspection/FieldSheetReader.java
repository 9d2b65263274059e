package org.coatrun.shared.bid.inspection;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.rules.ThicknessJudge;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.yaml.CsvTable;
import org.coatrun.shared.yaml.JobFileException;
import org.coatrun.shared.yaml.QuantityText;

/**
 * Reads field sheets that came back: the columns of {@link FieldSheet#HEADER} in any order, and
 * others beside them. A reading may stand without a unit, and then has that of its row's design; a
 * blank one was not taken. The least allowed is worked out anew from the design.
 */
public final class FieldSheetReader {

  private static final String LEADS_A_FORMULA = "=+-@";
  private static final Length THICKEST = Length.ofInches(24);

  private final CsvTable csv;
  private final CsvTable.Row row;

  private FieldSheetReader(CsvTable csv, CsvTable.Row row) {
    this.csv = csv;
    this.row = row;
  }

  /**
   * Parses a text.
   *
   * @throws JobFileException with one sentence about the first row that is wrong
   */
  public static List<FieldReading> parse(String file, String text) {
    CsvTable csv = CsvTable.parse(file, text);
    FieldSheet.HEADER.forEach(csv::column);
    if (csv.rows().isEmpty()) {
      throw new JobFileException(file, 1, "", "there is no row under the header.");
    }
    return csv.rows().stream().map(row -> new FieldSheetReader(csv, row).reading()).toList();
  }

  private FieldReading reading() {
    Length design = quantity("design", cell("design"));
    if (!(design.metres() > 0)) {
      throw fault("design", "the design thickness must be above 0.");
    }
    FieldRow read =
        new FieldRow(
            text("floor"),
            whole("set"),
            cell("guid"),
            text("name"),
            text("kind"),
            text("section"),
            whole("end"),
            whole("place"),
            text("where"),
            design,
            ThicknessJudge.lowestAllowed(design));
    return new FieldReading(read, filledIn(), row.line());
  }

  private Optional<Length> filledIn() {
    String cell = cell("reading");
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    boolean bare = cell.chars().noneMatch(Character::isLetter);
    String unit = cell("design").endsWith("mm") ? " mm" : " in";
    return Optional.of(quantity("reading", bare ? cell + unit : cell));
  }

  /** A cell without the apostrophe that keeps a spreadsheet from taking it for a formula. */
  private String text(String column) {
    String cell = cell(column);
    boolean guarded =
        cell.length() > 1 && cell.charAt(0) == '\'' && LEADS_A_FORMULA.indexOf(cell.charAt(1)) >= 0;
    return guarded ? cell.substring(1) : cell;
  }

  private String cell(String column) {
    return row.cells().get(csv.column(column));
  }

  private int whole(String column) {
    String cell = cell(column);
    if (!cell.matches("[0-9]{1,8}")) {
      throw fault(column, "'" + cell + "' is not a whole number.");
    }
    return Integer.parseInt(cell);
  }

  private Length quantity(String column, String text) {
    try {
      Length length = QuantityText.parse(text, Length.class);
      if (length.metres() < 0 || length.compareTo(THICKEST) > 0) {
        throw new IllegalArgumentException("'" + text + "' cannot be the thickness of a coat.");
      }
      return length;
    } catch (IllegalArgumentException e) {
      throw fault(column, e.getMessage());
    }
  }

  private JobFileException fault(String column, String sentence) {
    return new JobFileException(csv.file(), row.line(), column, sentence);
  }
}
