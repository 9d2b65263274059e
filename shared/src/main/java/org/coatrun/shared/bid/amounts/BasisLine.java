package org.coatrun.shared.bid.amounts;

/**
 * One thing that the amounts go by.
 *
 * @param key of the job file, or empty for a rule that has none
 * @param what it is, or the rule in a sentence
 * @param value as text; empty for a rule
 * @param source {@code job file}, a published source, or {@code common practice}
 * @param stated whether the job file states another value than the default
 */
public record BasisLine(String key, String what, String value, String source, boolean stated) {

  /** A rule that has no key. */
  static BasisLine rule(String sentence, String source) {
    return new BasisLine("", sentence, "", source, false);
  }

  /** As one sentence. */
  public String sentence() {
    String head = key.isEmpty() ? what : key + ": " + value + " (" + what + ")";
    return head + " [" + source + "]";
  }
}
