package org.coatrun.shared.bid.inspection;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.bid.material.WorkFloor;
import org.coatrun.shared.job.Construction;
import org.coatrun.shared.rules.BondStrength;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Pressure;

/**
 * The least bond that the height of a building asks for. Where the job states no heights, the
 * highest floor above the lowest one stands for both: this is never less than the true height of
 * the highest occupied floor above a lowest floor at street level or under it.
 */
final class RequiredBond {

  private RequiredBond() {}

  static Optional<Pressure> of(Construction building, List<WorkFloor> floors) {
    Optional<Length> highest = building.highestFloor().or(() -> rise(floors));
    Optional<Length> height = building.height().or(() -> highest);
    return highest.map(h -> BondStrength.least(h, height.orElse(h)));
  }

  private static Optional<Length> rise(List<WorkFloor> floors) {
    DoubleSummaryStatistics metres =
        floors.stream()
            .flatMap(f -> f.elevation().stream())
            .mapToDouble(Length::metres)
            .summaryStatistics();
    return metres.getCount() == 0
        ? Optional.empty()
        : Optional.of(Length.ofMetres(metres.getMax() - metres.getMin()));
  }
}
