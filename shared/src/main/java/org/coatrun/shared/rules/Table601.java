package org.coatrun.shared.rules;

import java.util.Locale;
import java.util.Optional;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;

/** Ratings by construction type: IBC Table 601 with its footnotes a and b. */
public final class Table601 {

  /** At this height above the floor below, roof members need no rating (footnote b). */
  public static final Length HIGH_ROOF = Length.ofFeet(20);

  private static final FireDuration ONE_HOUR = FireDuration.ofHours(1);

  /**
   * A rating and why.
   *
   * @param hours empty where the table states none for steel
   * @param reason one clause that names the row and the footnotes used
   */
  public record Rating(Optional<FireDuration> hours, String reason) {}

  private Table601() {}

  /** The rating of an element; heights that are not known leave footnote b unused. */
  public static Rating of(ConstructionType type, Occupancy occupancy, FrameFacts facts) {
    if (isHighRoof(occupancy, facts)) {
      return new Rating(
          Optional.of(FireDuration.ZERO),
          "IBC Table 601 footnote b: roof construction 20 ft or more above the floor below, group "
              + occupancy.group());
    }
    Rating row = row(type, facts);
    return isRoofFrame(type, facts) ? lessOneHour(row) : row;
  }

  private static Rating row(ConstructionType type, FrameFacts facts) {
    if (isPrimary(facts)) {
      return rating(type, "primary structural frame", type.frame());
    }
    return facts.roofConstruction()
        ? rating(type, "roof construction and secondary members", type.roof())
        : rating(type, "floor construction and secondary members", type.floor());
  }

  // A class that the model does not show counts as primary: the higher hours.
  private static boolean isPrimary(FrameFacts facts) {
    return facts.frameClass() != FrameClass.SECONDARY;
  }

  private static Rating rating(ConstructionType type, String row, Optional<FireDuration> hours) {
    String value =
        hours
            .map(h -> String.format(Locale.ROOT, "%s h", Numbers.plain(h.hours())))
            .orElse("no hours for steel");
    return new Rating(hours, "IBC Table 601, type " + type.code() + ", " + row + ": " + value);
  }

  private static boolean isHighRoof(Occupancy occupancy, FrameFacts facts) {
    return facts.roofConstruction()
        && !occupancy.protectsHighRoofs()
        && facts
            .heightAboveFloor()
            .filter(h -> h.metres() >= HIGH_ROOF.metres() - 1e-9)
            .isPresent();
  }

  private static boolean isRoofFrame(ConstructionType type, FrameFacts facts) {
    return type.relievesRoofFrames() && isPrimary(facts) && facts.supportsOnlyRoof();
  }

  private static Rating lessOneHour(Rating row) {
    return new Rating(
        row.hours().map(h -> h.minus(ONE_HOUR)),
        row.reason() + ", less 1 h by footnote a: supports only a roof");
  }
}
