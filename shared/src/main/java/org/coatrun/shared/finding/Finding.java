package org.coatrun.shared.finding;

import java.util.Comparator;
import java.util.Objects;

/**
 * One thing found amiss, where, and in one sentence.
 *
 * @param file name of the model file, or empty
 * @param line line in that file, from 1, or 0 where no line can be named
 * @param step instance number (#n) in that file, or 0
 * @param guid GlobalId of the element, or empty
 * @param sentence what was found, with the names and numbers of this case
 */
public record Finding(
    FindingCode code, String file, long line, long step, String guid, String sentence)
    implements Comparable<Finding> {

  private static final Comparator<Finding> ORDER =
      Comparator.comparing((Finding f) -> f.code.code())
          .thenComparing(Finding::file)
          .thenComparingLong(Finding::line)
          .thenComparingLong(Finding::step)
          .thenComparing(Finding::guid)
          .thenComparing(Finding::sentence);

  public Finding {
    Objects.requireNonNull(code);
    Objects.requireNonNull(file);
    Objects.requireNonNull(guid);
    Objects.requireNonNull(sentence);
  }

  /** A finding about the whole, not about one place. */
  public static Finding of(FindingCode code, String sentence) {
    return new Finding(code, "", 0, 0, "", sentence);
  }

  @Override
  public int compareTo(Finding other) {
    return ORDER.compare(this, other);
  }
}
