package org.coatrun.cli.report;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.shared.bid.inspection.InspectionJudgement;
import org.coatrun.shared.bid.inspection.Respray;
import org.coatrun.shared.bid.inspection.SetJudgement;
import org.coatrun.shared.rules.ThicknessJudge.Averaging;
import org.coatrun.shared.units.Length;

/** Judged readings as files. */
public final class ReadingsFiles {

  private static final List<Column<SetJudgement>> JUDGED =
      List.of(
          Column.of("floor", s -> s.head().floor()),
          Column.of("set", s -> s.head().set()),
          Column.of("guid", s -> s.head().guid()),
          Column.of("name", s -> s.head().name()),
          Column.of("kind", s -> s.head().kind()),
          Column.of("section", s -> s.head().section()),
          Column.of("design_mm", s -> millimetres(s.head().design())),
          Column.of("read", SetJudgement::taken),
          Column.of("blank", SetJudgement::missing),
          Column.of("least_mm", s -> millimetres(s.head().least())),
          averaging("lowest_mm", Averaging::lowest),
          averaging("average_mm", Averaging::average),
          Column.of("averaging_rule", s -> ReadingsScreen.word(s.taken() > 0, s.passesAveraging())),
          Column.of("under_design", s -> s.tenPercent().map(t -> t.below()).orElse(null)),
          Column.of(
              "ten_percent_rule", s -> ReadingsScreen.word(s.taken() > 0, s.passesTenPercent())));

  private static final List<Column<Respray>> RESPRAYS =
      List.of(
          Column.of("floor", Respray::floor),
          Column.of("set", Respray::set),
          Column.of("guid", Respray::guid),
          Column.of("name", Respray::name),
          Column.of("kind", Respray::kind),
          Column.of("design_mm", r -> millimetres(r.design())),
          Column.of("average_lacks_mm", r -> millimetres(r.lacking())),
          Column.of("too_thin_at", r -> String.join("; ", r.places())),
          Column.of("reason", Respray::reason));

  private ReadingsFiles() {}

  /**
   * Writes judged.csv, a row for each member and deck spot, and respray.csv, a row for each that
   * must be sprayed again.
   */
  public static void write(
      OutputFolder folder, InspectionJudgement judgement, List<String> cautions) {
    folder.write(
        "judged.csv",
        out -> CsvTable.write(out, Cautions.marked(JUDGED, cautions), judgement.sets()));
    folder.write(
        "respray.csv",
        out -> CsvTable.write(out, Cautions.marked(RESPRAYS, cautions), judgement.resprays()));
  }

  private static Column<SetJudgement> averaging(String name, Function<Averaging, Length> value) {
    return Column.of(
        name,
        s -> {
          Optional<Length> length = s.averaging().map(value);
          return length.map(ReadingsFiles::millimetres).orElse(null);
        });
  }

  private static Object millimetres(Length length) {
    return Rounded.plain(length.millimetres());
  }
}
