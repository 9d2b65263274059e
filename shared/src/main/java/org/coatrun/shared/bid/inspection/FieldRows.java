package org.coatrun.shared.bid.inspection;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.bid.Coated;
import org.coatrun.shared.rules.ReadingPlace;
import org.coatrun.shared.rules.ThicknessJudge;

/** Writes out the places of what was drawn. */
final class FieldRows {

  private FieldRows() {}

  static List<FieldRow> of(String floor, List<Drawn> drawn) {
    return drawn.stream().flatMap(d -> of(floor, d).stream()).toList();
  }

  private static List<FieldRow> of(String floor, Drawn drawn) {
    ReadingPlace places = drawn.places();
    List<String> words = PlaceWords.of(places);
    Coated item = drawn.item();
    List<FieldRow> rows = new ArrayList<>();
    for (int end = 1; end <= places.readings() / places.atEachEnd(); end++) {
      for (int place = 1; place <= places.atEachEnd(); place++) {
        rows.add(
            new FieldRow(
                floor,
                drawn.set(),
                item.guid(),
                item.name(),
                item.kindWord(),
                item.section(),
                end,
                place,
                words.get(place - 1),
                drawn.design(),
                ThicknessJudge.lowestAllowed(drawn.design())));
      }
    }
    return rows;
  }
}
