package org.coatrun.shared.bid.inspection;

import java.util.List;
import org.coatrun.shared.rules.ReadingPlace;

/**
 * Names of the reading places around a kind of member. The code says how many there are (see {@link
 * ReadingPlace}); which they are, as one goes around the contour, is common practice. Left and
 * right are seen from the first end.
 */
public final class PlaceWords {

  private static final List<String> BEAM =
      List.of(
          "top flange edge, left",
          "top flange underside, left",
          "web, left",
          "bottom flange upper face, left",
          "bottom flange underside",
          "bottom flange upper face, right",
          "web, right",
          "top flange underside, right",
          "top flange edge, right");

  private static final List<String> JOIST =
      List.of(
          "top chord, left",
          "web member, left",
          "bottom chord, left",
          "bottom chord underside",
          "bottom chord, right",
          "web member, right",
          "top chord, right");

  private static final List<String> W_COLUMN =
      List.of(
          "first flange outer face, left",
          "first flange outer face, right",
          "first flange edge, right",
          "first flange inner face, right",
          "web, right",
          "second flange inner face, right",
          "second flange outer face, right",
          "second flange outer face, left",
          "second flange edge, left",
          "second flange inner face, left",
          "web, left",
          "first flange inner face, left");

  private static final List<String> HOLLOW =
      List.of("first side", "second side", "third side", "fourth side");

  private static final List<String> DECK = List.of("valley", "crest", "left side", "right side");

  private PlaceWords() {}

  /** Words for each place at one end, in the order of their numbers. */
  public static List<String> of(ReadingPlace kind) {
    return switch (kind) {
      case BEAM -> BEAM;
      case JOIST_OR_TRUSS -> JOIST;
      case W_COLUMN -> W_COLUMN;
      case HOLLOW_COLUMN -> HOLLOW;
      case DECK -> DECK;
    };
  }
}
