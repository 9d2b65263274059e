package org.coatrun.cli.damage;

import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Damages the text of a model; the same seed, the same damage: references turned elsewhere, so that
 * cycles arise; numbers out of all measure; records and points of outlines changed about, lost or
 * doubled; bytes changed; the end lost.
 */
final class RecordMutator {

  private static final Pattern REFERENCE = Pattern.compile("(?<![\\w'])#\\d+(?!\\s*=)\\b");
  private static final Pattern NUMBER =
      Pattern.compile("(?<=[(,])-?\\d+\\.\\d*(E[+-]?\\d+)?(?=[,)])");
  private static final Pattern RECORD = Pattern.compile("(?m)^#\\d+\\s*=.*\\R");
  private static final Pattern ENTITY = Pattern.compile("(?<==)\\s*IFC\\w+");
  private static final Pattern NAMED = Pattern.compile("\\.[A-Z_]+\\.");
  private static final Pattern LISTED =
      Pattern.compile("(?<=[(,])(#\\d+|\\d+),(#\\d+|\\d+)(?=[,)])");
  private static final List<String> ODD =
      List.of("0.", "-1.", "1.E300", "1.E-300", "1.E9", "-0.", "3.", "$", "*", "()", "'x'", "#1");
  private static final String SPICE = "'#=;()/*\\,.$-0189 \n";
  private static final int MOST_EDITS = 5;

  private final Random random;

  RecordMutator(long seed) {
    random = new Random(seed);
  }

  String damaged(String text) {
    String damaged = text;
    for (int edits = 1 + random.nextInt(MOST_EDITS); edits > 0; edits--) {
      damaged = edited(damaged);
    }
    return damaged;
  }

  private String edited(String text) {
    return switch (random.nextInt(12)) {
      case 0, 1 -> replaced(text, REFERENCE, one(text, REFERENCE));
      case 2, 3 -> replaced(text, NUMBER, ODD.get(random.nextInt(ODD.size())));
      case 4, 5 -> replaced(text, NUMBER, one(text, NUMBER));
      case 6 -> replaced(text, RECORD, random.nextBoolean() ? "" : one(text, RECORD));
      case 7 -> replaced(text, ENTITY, one(text, ENTITY));
      case 8 -> replaced(text, NAMED, one(text, NAMED));
      case 9 -> swapped(text);
      case 10 -> random.nextInt(8) > 0 ? text : text.substring(0, random.nextInt(text.length()));
      default -> spiced(text);
    };
  }

  /** Two neighbours in a list change places: an outline crosses itself. */
  private String swapped(String text) {
    MatchResult m = oneOf(text, LISTED);
    return m == null
        ? text
        : text.substring(0, m.start()) + m.group(2) + "," + m.group(1) + text.substring(m.end());
  }

  private String spiced(String text) {
    if (text.isEmpty()) {
      return SPICE;
    }
    int at = random.nextInt(text.length());
    return text.substring(0, at)
        + SPICE.charAt(random.nextInt(SPICE.length()))
        + text.substring(at + random.nextInt(2));
  }

  private String one(String text, Pattern what) {
    MatchResult m = oneOf(text, what);
    return m == null ? "" : m.group();
  }

  private String replaced(String text, Pattern what, String by) {
    MatchResult m = oneOf(text, what);
    return m == null ? text : text.substring(0, m.start()) + by + text.substring(m.end());
  }

  /** One of all places where a pattern fits, each as likely as the other; null where none does. */
  private MatchResult oneOf(String text, Pattern what) {
    long all = what.matcher(text).results().count();
    if (all == 0) {
      return null;
    }
    return what.matcher(text).results().skip(random.nextInt((int) all)).findFirst().orElseThrow();
  }
}
