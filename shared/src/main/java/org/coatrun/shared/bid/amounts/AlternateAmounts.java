package org.coatrun.shared.bid.amounts;

import java.util.List;
import org.coatrun.shared.job.Alternate;

/**
 * Another way to do the job, beside the base bid.
 *
 * @param difference its headline less that of the base bid
 * @param lacks what its total lacks, in one clause, or empty
 */
public record AlternateAmounts(
    Alternate alternate,
    List<String> changes,
    Headline headline,
    Headline difference,
    String lacks) {

  public AlternateAmounts {
    changes = List.copyOf(changes);
  }

  /** What it is called. */
  public String name() {
    return alternate.name();
  }
}
