package org.coatrun.cli.report;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.estimate.Weight;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.surface.SurfaceLedger;
import org.coatrun.shared.units.Area;

/** The columns that members and decks share. Cells of lines that do not count stay empty. */
final class QuantityColumns {

  private QuantityColumns() {}

  static <L extends Line> List<Column<L>> identity() {
    return List.of(
        Column.of("guid", line -> line.identity().guid()),
        Column.of("step", line -> line.identity().id().step()),
        Column.of("class", line -> line.identity().sourceClass()),
        Column.of("name", line -> line.identity().name()),
        Column.of("mark", line -> line.identity().mark()),
        Column.of("storey", Line::storeyName));
  }

  static <L extends Line> Column<L> weight() {
    return measured(
        "weight_kg",
        q -> q.weight().map(Weight::mass).map(m -> Rounded.plain(m.kilograms())).orElse(null));
  }

  static <L extends Line> Column<L> volume() {
    return measured("volume_m3", q -> Rounded.fine(q.volume().cubicMetres()));
  }

  static <L extends Line> List<Column<L>> ledger() {
    return List.of(
        area("body_m2", SurfaceLedger::body),
        area("inside_m2", SurfaceLedger::inside),
        area("ends_m2", SurfaceLedger::ends),
        area("holes_m2", SurfaceLedger::holes),
        area("covered_m2", SurfaceLedger::covered),
        area("exposed_m2", SurfaceLedger::exposed));
  }

  static <L extends Line> List<Column<L>> verdict() {
    return List.of(
        Column.of("status", line -> line.outcome().status().word()),
        Column.of("reason", line -> line.outcome().reason()));
  }

  static <L extends Line> List<Column<L>> covers(Sources sources) {
    return List.of(
        measured("covered_by", q -> sources.coveredBy(q.covers())),
        measured("encased_m2", q -> Rounded.fine(encased(q.covers()))));
  }

  static <L extends Line> Column<L> file(Sources sources) {
    return Column.of("file", line -> sources.file(line.identity().id()));
  }

  /** A column that is empty for lines that do not count. */
  static <L extends Line> Column<L> measured(String name, Function<Quantities, Object> value) {
    return Column.of(name, line -> line.outcome().quantities().map(value).orElse(null));
  }

  private static <L extends Line> Column<L> area(String name, Function<SurfaceLedger, Area> part) {
    return measured(name, q -> Rounded.fine(part.apply(q.ledger()).squareMetres()));
  }

  private static double encased(List<Cover> covers) {
    ToDoubleFunction<Cover> area = cover -> cover.area().squareMetres();
    return covers.stream()
        .filter(cover -> cover.kind() == Cover.Kind.ENCASED)
        .mapToDouble(area)
        .sum();
  }
}
