package org.coatrun.cli.line;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.coatrun.cli.report.Column;
import org.coatrun.cli.report.Rounded;
import org.coatrun.cli.report.Words;
import org.coatrun.routing.line.EquivalentLengths;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Move;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.line.SpotComparison;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;

/** The columns of the line's tables; places are in the coordinates of the model. */
final class LineColumns {

  private LineColumns() {}

  /** Of routes.csv: one line for each place of work. */
  static List<Column<CellRow>> routes(LineRequest request, Vec3 origin) {
    return List.of(
        Column.of("place", CellRow::number),
        Column.of("floor", CellRow::storey),
        Column.of("x_m", r -> Rounded.plain(r.cell().at().x() + origin.x())),
        Column.of("y_m", r -> Rounded.plain(r.cell().at().y() + origin.y())),
        Column.of("coating_m3", r -> Rounded.fine(r.cell().coating().cubicMetres())),
        Column.of("board_feet", r -> Rounded.plain(r.cell().coating().boardFeet())),
        Column.of("highest_m", r -> metres(r.cell().highest())),
        Column.of("access", r -> r.cell().access().words()),
        Column.of("machine", r -> r.setUp().map(SetUp::machine).orElse(null)),
        Column.of("riser", r -> r.setUp().flatMap(SetUp::riser).orElse(null)),
        Column.of("set_up", r -> r.setUp().map(SetUp::number).orElse(null)),
        route("flexible_m", r -> metres(r.flexible())),
        route("pipe_m", r -> metres(r.pipe())),
        route("rise_m", r -> metres(r.rise())),
        route("length_m", r -> metres(r.length())),
        route("bends", Route::bends),
        route(
            "equivalent_quick_m",
            r -> metres(EquivalentLengths.of(r, request.stock().inside()).quick())),
        route(
            "equivalent_by_bends_m",
            r -> metres(EquivalentLengths.of(r, request.stock().inside()).byBends())),
        Column.of("result", r -> r.route().isPresent() ? "reached" : "no line"),
        miss("limit", n -> n.limit().name().toLowerCase(Locale.ROOT).replace('_', ' ')),
        miss("over_m", n -> metres(n.over())),
        miss("reason", NoRoute::sentence),
        Column.of("marks", r -> String.join(" ", r.cell().marks())));
  }

  private static Column<CellRow> route(String name, Function<Route, Object> value) {
    return Column.of(name, r -> r.route().map(value).orElse(null));
  }

  private static Column<CellRow> miss(String name, Function<NoRoute, Object> value) {
    return Column.of(name, r -> r.miss().map(value).orElse(null));
  }

  /** Of hardware.csv. */
  static List<Column<HardwareRow>> hardware() {
    return List.of(
        Column.of("for", HardwareRow::scope),
        Column.of("floor", HardwareRow::storey),
        Column.of("machine", HardwareRow::machine),
        Column.of("riser", HardwareRow::riser),
        Column.of("item", r -> r.hardware().item().words()),
        Column.of("size_m", r -> size(r.hardware().size().metres())),
        Column.of("size_ft", r -> size(r.hardware().size().feet())),
        Column.of("count", r -> r.hardware().count()));
  }

  private static Object size(double value) {
    return value == 0 ? null : Rounded.plain(value);
  }

  /** Of moves.csv. */
  static List<Column<Move>> moves() {
    return List.of(
        Column.of("number", Move::number),
        Column.of("kind", m -> Words.of(m.kind())),
        Column.of("move", Move::sentence));
  }

  /** Of spots.csv: the best places for the machine, each taken alone. */
  static List<Column<SpotComparison>> spots(LineRequest request, Vec3 origin) {
    return List.of(
        Column.of("spot", s -> s.spot().name()),
        Column.of("floor", s -> request.floors().get(s.spot().floor()).storey()),
        Column.of("x_m", s -> Rounded.plain(s.spot().at().x() + origin.x())),
        Column.of("y_m", s -> Rounded.plain(s.spot().at().y() + origin.y())),
        Column.of(
            "ground",
            s ->
                request.floors().get(s.spot().floor()).onAssumedGround(s.spot().at())
                    ? "assumed"
                    : "slab"),
        Column.of("cost", s -> Rounded.plain(s.cost())),
        Column.of("bound", s -> Rounded.plain(s.bound())),
        Column.of("places_not_reached", SpotComparison::uncovered),
        Column.of("longest_flexible_m", s -> metres(s.longestFlexible())),
        Column.of("pipe_m", s -> metres(s.pipe())),
        Column.of("set_ups", SpotComparison::setUps),
        Column.of("breaks", s -> String.join("; ", s.breaks())),
        Column.of("needs", s -> String.join("; ", s.needs())));
  }

  /** Of floors.csv: the engineer's check of each floor. */
  static List<Column<FloorPlan>> floors(LineResult result) {
    return FloorColumns.of(result);
  }

  static Object metres(Length length) {
    return Rounded.plain(length.metres());
  }
}
