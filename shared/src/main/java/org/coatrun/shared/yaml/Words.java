package org.coatrun.shared.yaml;

/** Words of a file that stand for constants. */
public final class Words {

  private Words() {}

  /**
   * The constant that a word stands for.
   *
   * @throws IllegalArgumentException with a sentence that names the known words
   */
  public static <E extends Enum<E>> E parse(String text, Class<E> type) {
    return type.cast(
        Spelling.constant(type, text)
            .orElseThrow(() -> new IllegalArgumentException(unknown(text, type))));
  }

  static String unknown(String text, Class<?> type) {
    return "'"
        + text
        + "' is not known here; use one of "
        + String.join(", ", Spelling.words(type))
        + ".";
  }

  /** The word of a constant. */
  public static String of(Enum<?> constant) {
    return Spelling.word(constant);
  }

  /** The key of a record component: {@code flexibleHose} is {@code flexible-hose}. */
  public static String key(String component) {
    return Spelling.key(component);
  }
}
