package org.coatrun.cli.field;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * What web-ifc 0.0.78 makes of a body; the table was written by {@code
 * test-models/peer/figures.mjs}.
 *
 * @param step the element's number in its file
 * @param area of all its faces, m²
 * @param volume that they enclose, m³
 * @param gape sum of all faces as vectors over the sum of their areas: nought where they close
 */
record PeerFigures(String model, long step, double area, double volume, double gape) {

  /** All rows of the table, by model and number. */
  static List<PeerFigures> all() {
    try (InputStream in = PeerFigures.class.getResourceAsStream("/peer/web-ifc-bodies.csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> of(line.split(",")))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PeerFigures of(String[] cells) {
    return new PeerFigures(
        cells[0],
        Long.parseLong(cells[1]),
        Double.parseDouble(cells[2]),
        Double.parseDouble(cells[3]),
        Double.parseDouble(cells[4]));
  }

  boolean isOpen() {
    return gape > 1e-4;
  }
}
