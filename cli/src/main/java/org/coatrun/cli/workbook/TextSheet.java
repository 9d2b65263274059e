package org.coatrun.cli.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.cli.spreadsheet.Cell;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.Style;

/** Sentences under a title, one a row. */
final class TextSheet {

  private static final int WIDTH = 110;

  private TextSheet() {}

  static Sheet of(String name, String title, List<String> sentences) {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(List.of(Cell.text(title, Style.TITLE)));
    sentences.forEach(s -> rows.add(List.of(Cell.text(s, Style.WRAPPED))));
    return new Sheet(name, List.of(WIDTH), 0, false, () -> Stream.of(rows).flatMap(List::stream));
  }
}
