package org.coatrun.shared.bid.inspection;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.rules.ThicknessJudge;
import org.coatrun.shared.units.Length;

/**
 * What two rules, each apart, say of a member or deck spot.
 *
 * @param head its first row
 * @param taken readings that were filled in
 * @param missing readings that were left blank
 * @param averaging what the averaging rule says; empty without readings
 * @param tenPercent what the 10 % rule says; empty without readings
 * @param underLeast rows whose reading lies under the least allowed
 */
public record SetJudgement(
    FieldRow head,
    int taken,
    int missing,
    Optional<ThicknessJudge.Averaging> averaging,
    Optional<ThicknessJudge.TenPercent> tenPercent,
    List<FieldReading> underLeast) {

  public SetJudgement {
    underLeast = List.copyOf(underLeast);
  }

  /** Whether it was read at all and passes the averaging rule. */
  public boolean passesAveraging() {
    return averaging.map(ThicknessJudge.Averaging::passes).orElse(false);
  }

  /** Whether it was read at all and passes the 10 % rule. */
  public boolean passesTenPercent() {
    return tenPercent.map(ThicknessJudge.TenPercent::passes).orElse(false);
  }

  /** Whether it was read and fails one of the rules. */
  public boolean mustBeResprayed() {
    return taken > 0 && !(passesAveraging() && passesTenPercent());
  }

  /** What the average lacks to the design; zero where nothing, or not read. */
  public Length lacking() {
    double lack = averaging.map(a -> head.design().metres() - a.average().metres()).orElse(0.0);
    return Length.ofMetres(Math.max(0, lack));
  }
}
