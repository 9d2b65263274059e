package org.coatrun.cli.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.coatrun.shared.estimate.Reasons;
import org.coatrun.shared.model.Evidence;

/** Names of the model's kinds as words for reports. */
public final class Words {

  private Words() {}

  /** {@code MATERIAL_PROFILE} as {@code material profile}. */
  public static String of(Enum<?> kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Pieces of evidence, weightiest first, in one cell. */
  static String of(List<Evidence> evidence) {
    return evidence.stream().map(Reasons::phrase).collect(Collectors.joining("; "));
  }

  /** {@code 1 beam}, {@code 2 beams}. */
  public static String count(long number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }
}
