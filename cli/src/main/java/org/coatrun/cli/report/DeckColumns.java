package org.coatrun.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.coatrun.shared.estimate.DeckLine;
import org.coatrun.shared.surface.SoffitMeasure;

/** The columns of decks.csv. */
final class DeckColumns {

  private DeckColumns() {}

  /** Surfaces, then hours, thickness and place. */
  static List<Column<DeckLine>> of(Sources sources, Results results) {
    List<Column<DeckLine>> columns = new ArrayList<>(of(sources));
    columns.addAll(BidColumns.of(results));
    return List.copyOf(columns);
  }

  static List<Column<DeckLine>> of(Sources sources) {
    List<Column<DeckLine>> columns = new ArrayList<>(QuantityColumns.identity());
    columns.add(Column.of("form", line -> Words.of(line.deck().form())));
    columns.add(Column.of("evidence", line -> Words.of(line.deck().evidence())));
    columns.add(QuantityColumns.weight());
    columns.addAll(QuantityColumns.ledger());
    columns.addAll(QuantityColumns.verdict());
    columns.addAll(QuantityColumns.covers(sources));
    columns.add(soffit("soffit_plan_m2", s -> Rounded.fine(s.plan().squareMetres())));
    columns.add(soffit("soffit_m2", s -> Rounded.fine(s.drawn().squareMetres())));
    columns.add(soffit("flutes", s -> s.fluted() ? "drawn" : "flat"));
    columns.add(QuantityColumns.volume());
    columns.add(QuantityColumns.file(sources));
    return List.copyOf(columns);
  }

  private static Column<DeckLine> soffit(String name, Function<SoffitMeasure, Object> value) {
    return QuantityColumns.measured(name, q -> q.soffit().map(value).orElse(null));
  }
}
