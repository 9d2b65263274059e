package org.coatrun.cli.field;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rows of the AISC Shapes Database v15.0, in inches; columns by the database's own names. */
final class SectionTable {

  /** One section of the table. */
  static final class Row {
    private final Map<String, String> cells;

    private Row(Map<String, String> cells) {
      this.cells = cells;
    }

    String type() {
      return cells.get("Type");
    }

    String name() {
      return cells.get("EDI_Std_Nomenclature");
    }

    String label() {
      return cells.get("AISC_Manual_Label");
    }

    boolean has(String column) {
      return !cells.get(column).isEmpty();
    }

    double value(String column) {
      return Double.parseDouble(cells.get(column));
    }

    /** The root radius that the table goes by: kdes less the thickness that it is counted from. */
    double root() {
      return value("kdes") - value(has("tf") ? "tf" : "t");
    }

    @Override
    public String toString() {
      return name();
    }
  }

  private final List<Row> rows;

  private SectionTable(List<Row> rows) {
    this.rows = rows;
  }

  static SectionTable read(Path csv) throws IOException {
    List<String> lines = Files.readAllLines(csv);
    String[] head = lines.get(0).split(",", -1);
    var rows = new ArrayList<Row>();
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      var row = new HashMap<String, String>();
      for (int i = 0; i < head.length; i++) {
        row.put(head[i], cells[i]);
      }
      rows.add(new Row(row));
    }
    return new SectionTable(rows);
  }

  List<Row> rows() {
    return rows;
  }

  List<Row> of(String type) {
    return rows.stream().filter(r -> r.type().equals(type)).toList();
  }

  Row named(String name) {
    return rows.stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
  }

  /** The single angle of a double one: the same legs and thickness. */
  Row singleOf(Row pair) {
    return of("L").stream()
        .filter(l -> same(l, pair, "t") && (legs(l, pair, "d", "b") || legs(l, pair, "b", "d")))
        .findFirst()
        .orElseThrow();
  }

  /** The lightest web among the sections that one set of rolls makes, spread more or less. */
  double lightestWeb(Row row) {
    return of(row.type()).stream()
        .filter(r -> same(r, row, "d") && same(r, row, "tf"))
        .filter(r -> Math.abs(overhang(r) - overhang(row)) < 0.02)
        .mapToDouble(r -> r.value("tw"))
        .min()
        .orElseThrow();
  }

  private static double overhang(Row r) {
    return r.value("bf") - r.value("tw");
  }

  private static boolean legs(Row a, Row b, String first, String second) {
    return a.value("d") == b.value(first) && a.value("b") == b.value(second);
  }

  private static boolean same(Row a, Row b, String column) {
    return a.value(column) == b.value(column);
  }
}
