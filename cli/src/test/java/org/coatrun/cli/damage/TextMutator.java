package org.coatrun.cli.damage;

import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Damages a text in the ways that hands, editors and malice do; the same seed, the same damage. */
final class TextMutator {

  private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,/]\\d+)*");
  private static final Pattern WORD = Pattern.compile("[A-Za-z][\\w/-]*");
  private static final Pattern LINE = Pattern.compile("(?m)^.*\\R?");
  private static final Pattern BLANKS = Pattern.compile("[ \\t]+");

  private static final List<String> ODD_NUMBERS =
      List.of(
          "0",
          "-1",
          "1e9",
          "1e-9",
          "1e400",
          "-0",
          "999999999999",
          ".5",
          "1/0",
          "0/1",
          "1-1/2",
          "0x1F",
          "0o17",
          "1_000",
          "12:30:45",
          ".inf",
          "-.INF",
          ".nan",
          "1,000",
          "1,00",
          "9/9/9",
          "2026-02-30",
          "10000-01-01",
          "\u0663",
          "1e",
          "--1",
          "5.",
          "1".repeat(400));

  private static final List<String> ODD_TEXTS =
      List.of(
          "",
          "~",
          "null",
          "yes",
          "[]",
          "{}",
          "[[",
          "}}",
          "''",
          "\"",
          "'",
          "#",
          ": ",
          "- ",
          "? ",
          "| ",
          "> ",
          "&a ",
          "*a",
          "!!str ",
          "!!java.util.Date ",
          "<<: ",
          "%YAML 1.1\n",
          "\n---\n",
          "\n...\n",
          "\t",
          "\r",
          "\r\n",
          "\u0000",
          "\u0085",
          "\u2028",
          "\uFEFF",
          "\u202E",
          "\u00e9",
          "\uD83D\uDD25",
          "\\",
          "\\u0000",
          ",",
          ";",
          "\"\"\"",
          "=1+1",
          "*",
          "(((((a+)+)+)+)+)$",
          "[".repeat(30),
          "{a: ".repeat(30),
          "- ".repeat(30),
          "a".repeat(2000),
          "*?".repeat(60));

  private final Random random;

  TextMutator(long seed) {
    this.random = new Random(seed);
  }

  /** The text with one to four edits. */
  String damaged(String text) {
    String damaged = text;
    for (int edits = 1 + random.nextInt(2) * random.nextInt(4); edits > 0; edits--) {
      damaged = edited(damaged);
    }
    return damaged;
  }

  private String edited(String text) {
    return switch (random.nextInt(12)) {
      case 0, 1 -> replaced(text, NUMBER, of(ODD_NUMBERS));
      case 2 -> replaced(text, NUMBER, one(text, NUMBER));
      case 3, 4 -> replaced(text, WORD, one(text, WORD));
      case 5 -> replaced(text, WORD, of(ODD_TEXTS));
      case 6 -> replaced(text, LINE, "");
      case 7 -> replaced(text, LINE, one(text, LINE) + one(text, LINE));
      case 8 -> replaced(text, BLANKS, " ".repeat(random.nextInt(6)));
      case 9 -> spiced(text, of(ODD_TEXTS));
      case 10 -> cut(text);
      default -> repeated(text);
    };
  }

  private String spiced(String text, String by) {
    int at = random.nextInt(text.length() + 1);
    return text.substring(0, at) + by + text.substring(at);
  }

  /** As a file ends whose copying was interrupted; now and then only. */
  private String cut(String text) {
    return random.nextInt(4) > 0 || text.isEmpty() ? text : text.substring(0, nextAt(text));
  }

  /** A few characters, many times over. */
  private String repeated(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int at = nextAt(text);
    int to = Math.min(text.length(), at + 1 + random.nextInt(12));
    int times = random.nextInt(10) == 0 ? 20_000 : 40;
    return text.substring(0, at) + text.substring(at, to).repeat(times) + text.substring(to);
  }

  private int nextAt(String text) {
    return random.nextInt(text.length());
  }

  private String of(List<String> all) {
    return all.get(random.nextInt(all.size()));
  }

  private String one(String text, Pattern what) {
    List<String> all = what.matcher(text).results().map(MatchResult::group).toList();
    return all.isEmpty() ? "" : of(all);
  }

  private String replaced(String text, Pattern what, String by) {
    List<MatchResult> all = what.matcher(text).results().toList();
    if (all.isEmpty()) {
      return text;
    }
    MatchResult m = all.get(random.nextInt(all.size()));
    return text.substring(0, m.start()) + by + text.substring(m.end());
  }
}
