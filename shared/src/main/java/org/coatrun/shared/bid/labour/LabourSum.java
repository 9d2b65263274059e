package org.coatrun.shared.bid.labour;

/**
 * Crew hours, summed.
 *
 * @param spraying by rates, kinds and heights
 * @param setUp to set up, mask, move and clean
 * @param waiting for the machine, where it gives fewer bags an hour than the crew would spray
 * @param patching and clean-up, as a share of spraying
 * @param byLift hours of spraying that take a lift or a scaffold
 */
public record LabourSum(
    double spraying, double waiting, double setUp, double patching, double byLift) {

  /** No hours. */
  public static final LabourSum NONE = new LabourSum(0, 0, 0, 0, 0);

  /** All crew hours. */
  public double crewHours() {
    return spraying + waiting + setUp + patching;
  }

  /** The sum of both. */
  public LabourSum plus(LabourSum more) {
    return new LabourSum(
        spraying + more.spraying,
        waiting + more.waiting,
        setUp + more.setUp,
        patching + more.patching,
        byLift + more.byLift);
  }
}
