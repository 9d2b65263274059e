package org.coatrun.cli.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What came of the contests on models of one kind, as a table of a text in Markdown. */
final class BenchTable {

  /** Programs on one model. */
  record Row(String model, int elements, Map<String, Timed> times) {}

  private final List<String> programs;
  private final Map<String, String> beside;
  private final List<Row> rows = new ArrayList<>();

  /**
   * A table without rows.
   *
   * @param programs columns, in their order
   * @param beside which program is held against which other
   */
  BenchTable(List<String> programs, Map<String, String> beside) {
    this.programs = List.copyOf(programs);
    this.beside = Map.copyOf(beside);
  }

  void add(Row row) {
    rows.add(row);
  }

  /** The growth of a program's time with the number of elements. */
  Growth growth(String program) {
    return Growth.of(
        rows.stream()
            .map(r -> new Growth.Point(r.elements(), r.times().get(program).seconds()))
            .toList());
  }

  String text() {
    var lines = new ArrayList<String>();
    lines.add(line("Model", "Elements", programs.stream().toList()));
    lines.add(line("---", "--:", programs.stream().map(p -> "---").toList()));
    for (Row row : rows) {
      lines.add(
          line(
              row.model(),
              Integer.toString(row.elements()),
              programs.stream().map(p -> cell(row, p)).toList()));
    }
    if (rows.size() > 1) {
      lines.add(line("Growth", "", programs.stream().map(p -> growth(p).toString()).toList()));
    }
    return String.join("\n", lines) + "\n";
  }

  private String cell(Row row, String program) {
    Timed t = row.times().get(program);
    var words = new ArrayList<String>();
    words.add(String.format(Locale.ROOT, "%.2f s", t.seconds()));
    words.add(String.format(Locale.ROOT, "%.0f/s", row.elements() / t.seconds()));
    t.peak().ifPresent(p -> words.add(String.format(Locale.ROOT, "%.0f MiB", p)));
    Optional.ofNullable(beside.get(program))
        .map(row.times()::get)
        .ifPresent(
            other ->
                words.add(String.format(Locale.ROOT, "ratio %.2f", t.seconds() / other.seconds())));
    return String.join(", ", words);
  }

  private static String line(String model, String elements, List<String> cells) {
    return "| " + model + " | " + elements + " | " + String.join(" | ", cells) + " |";
  }
}
