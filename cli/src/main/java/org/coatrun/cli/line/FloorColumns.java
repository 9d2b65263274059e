package org.coatrun.cli.line;

import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.coatrun.cli.report.Column;
import org.coatrun.cli.report.Rounded;
import org.coatrun.shared.line.FloorCheck;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.Region;

/** The columns of floors.csv: what the engineer checks on each floor. */
final class FloorColumns {

  private FloorColumns() {}

  static List<Column<FloorPlan>> of(LineResult result) {
    double origin = result.building().origin().z();
    return List.of(
        Column.of("floor", f -> f.outline().storey()),
        Column.of("elevation_m", f -> Rounded.plain(f.outline().elevation().metres() + origin)),
        Column.of("plate_m2", f -> Rounded.plain(area(f.outline().plate()))),
        Column.of("free_m2", f -> Rounded.plain(area(f.free()))),
        Column.of("places", f -> f.cells().size()),
        Column.of("set_ups", f -> f.setUps().size()),
        check("rise_m", c -> LineColumns.metres(c.rise())),
        check("storeys", FloorCheck::storeys),
        check("flexible_m", c -> LineColumns.metres(c.flexible())),
        check("pipe_m", c -> LineColumns.metres(c.pipe())),
        check("bends", FloorCheck::bends),
        check("standpipe_required", c -> c.standpipe().isEmpty() ? "no" : "yes"),
        check("standpipe_why", c -> String.join("; ", c.standpipe())),
        check("equivalent_quick_m", c -> LineColumns.metres(c.equivalent().quick())),
        check("equivalent_by_bends_m", c -> LineColumns.metres(c.equivalent().byBends())),
        check("pump_pressure_kpa", c -> Rounded.plain(c.waterAtPump().kilopascals())),
        check("pump_pressure_psi", c -> Rounded.plain(c.waterAtPump().psi())),
        check("booster", c -> c.booster().map(b -> b ? "yes" : "no").orElse("supply not known")),
        check("feeder_drop_percent", c -> Rounded.plain(c.feederDrop())),
        check("air_m3_per_s", c -> Rounded.plain(air(c))),
        check("fans", FloorColumns::fans),
        Column.of("bags", f -> bags(result, f).needed()),
        Column.of("storage_bags", f -> orNull(bags(result, f).room())),
        check("notes", c -> String.join("; ", c.notes())));
  }

  private static Column<FloorPlan> check(String name, Function<FloorCheck, Object> value) {
    return Column.of(name, f -> f.check().map(value).orElse(null));
  }

  private static FloorBags bags(LineResult result, FloorPlan floor) {
    return FloorBags.of(result.plan(), floor, result.job());
  }

  private static Object orNull(OptionalLong value) {
    return value.isPresent() ? value.getAsLong() : null;
  }

  static double area(List<Region> regions) {
    return regions.stream().mapToDouble(Region::area).sum();
  }

  static double air(FloorCheck check) {
    return check.fans().stream().mapToDouble(f -> f.air().cubicMetresPerSecond()).sum();
  }

  private static String fans(FloorCheck check) {
    return check.fans().stream()
        .map(
            f -> String.format(Locale.ROOT, "%s %.0f cfm", f.space(), f.air().cubicFeetPerMinute()))
        .collect(Collectors.joining("; "));
  }
}
