package org.coatrun.shared.listing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Temperature;
import org.coatrun.shared.yaml.CsvTable;
import org.coatrun.shared.yaml.JobFileException;
import org.coatrun.shared.yaml.QuantityText;
import org.coatrun.shared.yaml.Words;

/**
 * Tables of a listing as CSV: kind, by, restraint, hours, critical-temperature (may be blank),
 * factor, thickness; rows that share all but the last two make one table.
 */
final class TablesCsv {

  private record Head(
      MemberKind kind,
      FactorForm by,
      Restraint restraint,
      FireDuration hours,
      Optional<Temperature> critical) {}

  private final CsvTable csv;

  private TablesCsv(CsvTable csv) {
    this.csv = csv;
  }

  static List<ListedTable> parse(String file, String text) {
    return new TablesCsv(CsvTable.parse(file, text)).tables();
  }

  private List<ListedTable> tables() {
    Map<Head, List<ListedRow>> byHead = new LinkedHashMap<>();
    Map<Head, Integer> lines = new LinkedHashMap<>();
    for (CsvTable.Row row : csv.rows()) {
      Head head = head(row);
      lines.putIfAbsent(head, row.line());
      byHead.computeIfAbsent(head, h -> new ArrayList<>()).add(row(row));
    }
    List<ListedTable> tables = new ArrayList<>();
    byHead.forEach((head, rows) -> tables.add(table(head, rows, lines.get(head))));
    return tables;
  }

  private ListedTable table(Head h, List<ListedRow> rows, int line) {
    try {
      return new ListedTable(
          List.of(h.kind()), h.by(), h.restraint(), h.hours(), h.critical(), rows);
    } catch (IllegalArgumentException e) {
      throw new JobFileException(
          csv.file(), line, "", "in the table that begins here: " + e.getMessage() + ".");
    }
  }

  private Head head(CsvTable.Row row) {
    String critical = cell(row, "critical-temperature");
    return new Head(
        word(row, "kind", MemberKind.class),
        word(row, "by", FactorForm.class),
        word(row, "restraint", Restraint.class),
        quantity(row, "hours", FireDuration.class),
        critical.isEmpty()
            ? Optional.empty()
            : Optional.of(quantity(row, "critical-temperature", Temperature.class)));
  }

  private ListedRow row(CsvTable.Row row) {
    double factor = number(row, "factor");
    Length thickness = quantity(row, "thickness", Length.class);
    if (!(factor > 0) || !(thickness.metres() > 0)) {
      throw fault(row, "factor", "factor and thickness must lie above 0.");
    }
    return new ListedRow(factor, thickness);
  }

  private double number(CsvTable.Row row, String column) {
    try {
      double value = Double.parseDouble(cell(row, column));
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // said below
    }
    throw fault(row, column, "'" + cell(row, column) + "' is not a number.");
  }

  private <T> T quantity(CsvTable.Row row, String column, Class<T> type) {
    try {
      return QuantityText.parse(cell(row, column), type);
    } catch (IllegalArgumentException e) {
      throw fault(row, column, e.getMessage());
    }
  }

  private <E extends Enum<E>> E word(CsvTable.Row row, String column, Class<E> type) {
    try {
      return Words.parse(cell(row, column), type);
    } catch (IllegalArgumentException e) {
      throw fault(row, column, e.getMessage());
    }
  }

  private String cell(CsvTable.Row row, String column) {
    return row.cells().get(csv.column(column));
  }

  private JobFileException fault(CsvTable.Row row, String column, String sentence) {
    return new JobFileException(csv.file(), row.line(), column, sentence);
  }
}
