package org.coatrun.shared.yaml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.coatrun.shared.units.Length;

/** Quantities as people write them: {@code 250 ft}, {@code 1-1/2 in}, {@code 6 ft 4 in}. */
public final class QuantityText {

  /** A number: 12, 1,200, 0.5, 3/8, 1-1/2. */
  static final String NUMBER =
      "-?(?:[0-9]{1,3}(?:,[0-9]{3})+(?:\\.[0-9]+)?|[0-9]{1,12}(?:\\.[0-9]{1,12})?"
          + "|\\.[0-9]{1,12}|(?:[0-9]{1,6}[- ])?[0-9]{1,6}/[1-9][0-9]{0,5})";

  private static final Pattern SPLIT = Pattern.compile("(" + NUMBER + ") ?([^0-9,./ -][^ ]*)");
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile("(" + NUMBER + ") ?ft (" + NUMBER + ") ?in");
  private static final Pattern MIXED = Pattern.compile("(?:([0-9]+)[- ])?([0-9]+)/([0-9]+)");

  private QuantityText() {}

  /**
   * The quantity that a text states.
   *
   * @throws IllegalArgumentException with a sentence where the text states none of that kind
   */
  public static <T> T parse(String text, Class<T> type) {
    Dimension dimension =
        Dimension.of(type)
            .orElseThrow(
                () -> new IllegalArgumentException("no quantity: " + type.getSimpleName()));
    return type.cast(parse(text, dimension));
  }

  static Object parse(String written, Dimension dimension) {
    String text = plain(written);
    Optional<Length> both = feetAndInches(text, dimension);
    if (both.isPresent()) {
      return both.get();
    }
    Matcher m = SPLIT.matcher(text);
    if (!m.matches()) {
      throw new IllegalArgumentException(
          "'"
              + text
              + "' is not "
              + dimension.word()
              + "; write a number and one of "
              + dimension.unitNames()
              + ".");
    }
    return dimension
        .unit(m.group(2))
        .map(unit -> unit.make().apply(number(m.group(1))))
        .orElseThrow(() -> wrongUnit(m.group(2), dimension));
  }

  /** A number with a fixed unit, such as {@code 30 bags/h}. */
  static double parse(String text, String unit) {
    Matcher m = SPLIT.matcher(plain(text));
    if (m.matches() && m.group(2).equals(unit)) {
      return number(m.group(1));
    }
    throw new IllegalArgumentException("'" + text + "' needs a number and the unit " + unit + ".");
  }

  private static IllegalArgumentException wrongUnit(String unit, Dimension dimension) {
    return new IllegalArgumentException(
        "'"
            + unit
            + "' is no unit of "
            + dimension.word()
            + "; use one of "
            + dimension.unitNames()
            + ".");
  }

  private static Optional<Length> feetAndInches(String text, Dimension dimension) {
    Matcher m = FEET_AND_INCHES.matcher(text);
    if (dimension != Dimension.LENGTH || !m.matches()) {
      return Optional.empty();
    }
    double feet = number(m.group(1));
    double inches = number(m.group(2));
    return Optional.of(Length.ofFeet(feet + Math.copySign(inches, feet) / 12));
  }

  /** The value of a number as written. */
  static double number(String text) {
    boolean negative = text.startsWith("-");
    String digits = negative ? text.substring(1) : text;
    Matcher mixed = MIXED.matcher(digits);
    double value =
        mixed.matches()
            ? (mixed.group(1) == null ? 0 : Double.parseDouble(mixed.group(1)))
                + Double.parseDouble(mixed.group(2)) / Double.parseDouble(mixed.group(3))
            : Double.parseDouble(digits.replace(",", ""));
    return negative ? -value : value;
  }

  /** A regular expression (ECMA 262) of what {@link #parse(String, Class)} accepts. */
  static String pattern(Dimension dimension) {
    String units =
        dimension.units().stream().map(u -> spelled(u.name())).collect(Collectors.joining("|"));
    String one = "^" + NUMBER + " ?(?:" + units + ")$";
    return dimension == Dimension.LENGTH ? one + "|^" + NUMBER + " ?ft " + NUMBER + " ?in$" : one;
  }

  static String pattern(String unit) {
    return "^" + NUMBER + " ?" + spelled(unit) + "$";
  }

  /** Superscripts and the degree sign may be written or left out. */
  private static String plain(String text) {
    return text.replace('\u00B2', '2').replace('\u00B3', '3').replace("\u00B0", "");
  }

  private static String spelled(String unit) {
    String escaped = unit.replace("2", "[2\u00B2]").replace("3", "[3\u00B3]");
    return unit.equals("F") || unit.equals("C") ? "\u00B0?" + unit : escaped;
  }
}
