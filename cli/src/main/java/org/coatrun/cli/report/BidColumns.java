package org.coatrun.cli.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import org.coatrun.shared.bid.CoatedSummary;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.Thickness;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.units.Length;

/** The columns of hours, thickness and place, behind those of surfaces. */
final class BidColumns {

  private BidColumns() {}

  static <L extends Line> List<Column<L>> of(Results results) {
    return List.of(
        rated(
            results,
            "hours",
            r -> r.ruling().hours().map(h -> Rounded.plain(h.hours())).orElse(null)),
        rated(results, "hours_decided_by", r -> r.ruling().decidedBy()),
        rated(results, "hours_reason", r -> r.ruling().reason()),
        coated(results, "model_fire_rating", c -> c.modelRating().orElse(null)),
        rated(results, "thickness_mm", r -> design(r.thickness())),
        rated(results, "thickness_exact_mm", r -> exact(r.thickness())),
        rated(results, "thickness_reason", r -> r.thickness().reason()),
        rated(results, "listing", r -> listing(r.thickness())),
        coated(results, "working_floor", CoatedSummary::floors),
        coated(
            results,
            "height_above_floor_m",
            c -> c.top().map(h -> Rounded.plain(h.metres())).orElse(null)),
        coated(results, "room", CoatedSummary::room),
        coated(results, "kind", CoatedSummary::kindWord));
  }

  /** Zero where none is needed, empty where none can be given. */
  private static BigDecimal design(Thickness thickness) {
    if (thickness instanceof Thickness.NotNeeded) {
      return BigDecimal.ZERO;
    }
    return thickness.spray().map(BidColumns::millimetres).orElse(null);
  }

  private static BigDecimal exact(Thickness thickness) {
    return thickness instanceof Thickness.Given given ? millimetres(given.exact()) : null;
  }

  private static BigDecimal millimetres(Length length) {
    return Rounded.plain(length.millimetres());
  }

  private static String listing(Thickness thickness) {
    if (thickness instanceof Thickness.Given given) {
      return given.demonstration() ? given.listing() + " (DEMONSTRATION)" : given.listing();
    }
    return "";
  }

  private static <L extends Line> Column<L> rated(
      Results results, String name, Function<RatedLine, Object> value) {
    return Column.of(name, line -> results.rated(line.identity().id()).map(value).orElse(null));
  }

  private static <L extends Line> Column<L> coated(
      Results results, String name, Function<CoatedSummary, Object> value) {
    return Column.of(name, line -> results.coated(line.identity().id()).map(value).orElse(null));
  }
}
