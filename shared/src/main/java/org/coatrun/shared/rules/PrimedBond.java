package org.coatrun.shared.rules;

import java.util.List;
import org.coatrun.shared.units.Pressure;

/**
 * Bond on primed or painted steel that is not in the tested assembly.
 *
 * <p>Source: IBC 704.13.3.2: the average at least 80 % and each test at least 50 % of the bond on
 * bare steel.
 */
public final class PrimedBond {

  private static final double AVERAGE_SHARE = 0.8;
  private static final double EACH_SHARE = 0.5;

  /** Arithmetic noise, so that 80 % is 80 %. */
  private static final double SLACK = 1e-9;

  private PrimedBond() {}

  /** Whether tests on primed steel are good enough against the bond on bare steel. */
  public static boolean accepted(List<Pressure> primed, Pressure bare) {
    double average = primed.stream().mapToDouble(Pressure::pascals).average().orElse(0);
    return average >= AVERAGE_SHARE * bare.pascals() * (1 - SLACK)
        && primed.stream().allMatch(p -> p.pascals() >= EACH_SHARE * bare.pascals() * (1 - SLACK));
  }
}
