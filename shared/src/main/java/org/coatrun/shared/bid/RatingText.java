package org.coatrun.shared.bid;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.units.FireDuration;

/** Reads the fire ratings that models state: {@code 2 HR}, {@code 1 1/2 hours}, {@code REI 90}. */
public final class RatingText {

  private static final String NUMBER =
      "(?:(\\d{1,3})[- ]+(\\d)/(\\d)|(\\d)/(\\d)|(\\d{1,3}(?:[.,]\\d{1,2})?))";
  private static final Pattern HOURS =
      Pattern.compile(NUMBER + "[- ]?(?:H|HR|HRS|HOUR|HOURS|STD)\\.?");
  private static final Pattern MINUTES =
      Pattern.compile("(\\d{1,3})[- ]?(?:M|MIN|MINS|MINUTE|MINUTES)\\.?");
  private static final Pattern CLASS =
      Pattern.compile("(?:R|E|I|REI|EI|RE|F|REI-M)[- ]?(\\d{1,3})");
  private static final Pattern PLAIN = Pattern.compile(NUMBER);
  private static final Pattern NOTHING =
      Pattern.compile("[-.?]*|N/?A|NONE|NULL|UNDEFINED|UNKNOWN|NOTDEFINED|NOT ?RATED|UNRATED|NR");

  private static final String FIRE_RATING = "FireRating";

  /** A plain number up to this is hours, above it minutes: no rating is 5 minutes or 10 hours. */
  private static final double MOST_HOURS = 6;

  private RatingText() {}

  /** The text that a model gives for an element's fire rating, where it says something. */
  static Optional<String> of(Properties properties) {
    return properties.text(FIRE_RATING).filter(text -> !saysNothing(text));
  }

  /** The rating that a text states; empty where it cannot be read as hours or minutes. */
  public static Optional<FireDuration> read(String text) {
    String plain = text.trim().toUpperCase(Locale.ROOT);
    Matcher hours = HOURS.matcher(plain);
    if (hours.matches()) {
      return Optional.of(FireDuration.ofHours(number(hours)));
    }
    Matcher minutes = MINUTES.matcher(plain);
    if (minutes.matches()) {
      return Optional.of(FireDuration.ofMinutes(Double.parseDouble(minutes.group(1))));
    }
    Matcher european = CLASS.matcher(plain);
    if (european.matches()) {
      return Optional.of(FireDuration.ofMinutes(Double.parseDouble(european.group(1))));
    }
    Matcher number = PLAIN.matcher(plain);
    return number.matches() ? Optional.of(bare(number(number))) : Optional.empty();
  }

  /** Whether a text says that no rating was meant at all. */
  public static boolean saysNothing(String text) {
    return NOTHING.matcher(text.trim().toUpperCase(Locale.ROOT)).matches();
  }

  private static FireDuration bare(double value) {
    return value <= MOST_HOURS ? FireDuration.ofHours(value) : FireDuration.ofMinutes(value);
  }

  private static double number(Matcher m) {
    if (m.group(1) != null) {
      return Double.parseDouble(m.group(1)) + fraction(m.group(2), m.group(3));
    }
    return m.group(4) != null
        ? fraction(m.group(4), m.group(5))
        : Double.parseDouble(m.group(6).replace(',', '.'));
  }

  // A fraction over nought is no number; it reads as nought, which no code asks for.
  private static double fraction(String over, String under) {
    return under.equals("0") ? 0 : Double.parseDouble(over) / Double.parseDouble(under);
  }
}
