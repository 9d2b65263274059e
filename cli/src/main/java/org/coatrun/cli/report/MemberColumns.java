package org.coatrun.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Weight;
import org.coatrun.shared.frame.FrameMember;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.surface.SectionMeasure;

/**
 * The columns of members.csv. The first 22, up to {@code reason}, keep their names and places for
 * good; what later versions add stands behind them.
 */
final class MemberColumns {

  private MemberColumns() {}

  /** Surfaces, section and frame, then hours, thickness and place. */
  static List<Column<MemberLine>> of(Sources sources, Results results) {
    List<Column<MemberLine>> columns = new ArrayList<>(of(sources));
    columns.addAll(BidColumns.of(results));
    return List.copyOf(columns);
  }

  static List<Column<MemberLine>> of(Sources sources) {
    List<Column<MemberLine>> columns = new ArrayList<>(QuantityColumns.identity());
    columns.add(Column.of("role", line -> Words.of(line.member().role())));
    columns.add(Column.of("section", line -> line.member().section().name()));
    columns.add(Column.of("section_source", MemberColumns::sectionSource));
    columns.add(QuantityColumns.measured("length_m", q -> Rounded.plain(q.length().metres())));
    columns.add(QuantityColumns.weight());
    columns.addAll(QuantityColumns.ledger());
    columns.add(section("heated_perimeter_m", s -> Rounded.plain(s.heated().metres())));
    columns.add(
        QuantityColumns.measured(
            "section_factor_per_m",
            q -> q.sectionFactor().map(f -> Rounded.plain(f.perMetre())).orElse(null)));
    columns.add(QuantityColumns.measured("w_over_d", q -> Rounded.plain(q.weightOverPerimeter())));
    columns.addAll(QuantityColumns.verdict());
    columns.add(frame("frame_class", f -> f.frameClass().word()));
    columns.add(frame("frame_reason", FrameMember::reason));
    columns.addAll(QuantityColumns.covers(sources));
    columns.add(section("coating_offset_m2_per_m", MemberColumns::coatContour));
    columns.add(section("perimeter_m", s -> Rounded.plain(s.outline().metres())));
    columns.add(section("perimeter_basis", s -> Words.of(s.basis())));
    columns.add(section("section_along", s -> s.varies() ? "least favourable" : "even"));
    columns.add(section("steel_area_m2", s -> Rounded.fine(s.steel().squareMetres())));
    columns.add(section("coating_corner_factor", s -> Rounded.plain(s.cornerFactor())));
    columns.add(
        QuantityColumns.measured(
            "flute_voids_m3", q -> Rounded.fine(q.fluteVolume().cubicMetres())));
    columns.add(QuantityColumns.measured("weight_source", q -> weightSource(q.weight())));
    columns.add(QuantityColumns.volume());
    columns.add(Column.of("substance", line -> line.member().classification().substance().word()));
    columns.add(Column.of("evidence", line -> Words.of(line.member().classification().evidence())));
    columns.add(QuantityColumns.file(sources));
    return List.copyOf(columns);
  }

  private static Column<MemberLine> frame(String name, Function<FrameMember, Object> value) {
    return Column.of(name, line -> line.frame().map(value).orElse(null));
  }

  private static Column<MemberLine> section(String name, Function<SectionMeasure, Object> value) {
    return QuantityColumns.measured(name, q -> q.section().map(value).orElse(null));
  }

  private static Object coatContour(SectionMeasure section) {
    return Rounded.plain(section.coatContour(SectionMeasure.COAT_REFERENCE).metres());
  }

  private static String sectionSource(MemberLine line) {
    SectionName.Source source = line.member().section().source();
    return source == SectionName.Source.NONE ? "" : Words.of(source);
  }

  private static String weightSource(Optional<Weight> weight) {
    return weight.map(w -> w.nominal().isPresent() ? "nominal" : "volume").orElse("");
  }
}
