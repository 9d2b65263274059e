package org.coatrun.shared.yaml;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How names stand in a file: keys with hyphens, words in lower case. */
final class Spelling {

  private static final int NEAR = 3;

  private Spelling() {}

  /** The key of a record component: {@code flexibleHose} is {@code flexible-hose}. */
  static String key(String component) {
    return component.replaceAll("([a-z0-9])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
  }

  /** The word of an enum constant: what it prints itself as, or its name in lower case. */
  static String word(Enum<?> constant) {
    return spellsItself(constant.getDeclaringClass())
        ? constant.toString()
        : constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static boolean spellsItself(Class<?> type) {
    return Arrays.stream(type.getDeclaredMethods())
        .anyMatch(m -> m.getName().equals("toString") && m.getParameterCount() == 0);
  }

  static List<String> words(Class<?> type) {
    return Arrays.stream(type.getEnumConstants()).map(c -> word((Enum<?>) c)).toList();
  }

  static Optional<Object> constant(Class<?> type, String text) {
    return Arrays.stream(type.getEnumConstants())
        .filter(c -> word((Enum<?>) c).equals(text))
        .map(c -> (Object) c)
        .findFirst();
  }

  /** The known word nearest to a mistyped one, where one is near. */
  static Optional<String> nearest(String text, List<String> known) {
    return known.stream()
        .filter(k -> distance(text, k) < NEAR)
        .min((a, b) -> Integer.compare(distance(text, a), distance(text, b)));
  }

  /** Edits between two words (Levenshtein). */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    Arrays.setAll(row, j -> j);
    for (int i = 1; i <= Math.min(a.length(), 60); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
