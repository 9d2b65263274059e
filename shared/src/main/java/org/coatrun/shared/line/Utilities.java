package org.coatrun.shared.line;

import java.util.Objects;
import java.util.Optional;
import org.coatrun.shared.rules.Conductor;
import org.coatrun.shared.rules.VoltageDrop;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Pressure;

/**
 * Water, power and air as the job has them.
 *
 * @param nozzle least water pressure at the nozzle
 * @param waterFlow water at the nozzle
 * @param waterHose inside diameter of the water hose
 * @param roughness Hazen–Williams C of the water hose
 * @param supply pressure of the site's water, where known
 * @param feeder conductor of the feeder to the machine, where known
 * @param amperes load of the machine
 * @param volts between phases
 * @param feederRun length of the feeder, where it is stated and not to be taken from the plan
 * @param feederPercent most voltage that may be lost on it, in per cent
 * @param airChanges an hour, until cured
 */
public record Utilities(
    Pressure nozzle,
    FlowRate waterFlow,
    Length waterHose,
    double roughness,
    Optional<Pressure> supply,
    Optional<Conductor> feeder,
    double amperes,
    double volts,
    Optional<Length> feederRun,
    double feederPercent,
    double airChanges) {

  public Utilities {
    Objects.requireNonNull(supply);
    Objects.requireNonNull(feeder);
    Objects.requireNonNull(feederRun);
    if (waterHose.metres() <= 0 || roughness <= 0 || volts <= 0 || amperes < 0 || airChanges < 0) {
      throw new IllegalArgumentException("water, power or air below what can be");
    }
  }

  /**
   * 65 psi at the nozzle and four air changes an hour; 5 gal/min through 3/4 in plastic hose, 40 A
   * at 480 V (common practice); supply and feeder not known.
   */
  public static Utilities commonPractice() {
    return new Utilities(
        Pressure.ofPsi(65),
        FlowRate.ofGallonsPerMinute(5),
        Length.ofInches(0.75),
        150,
        Optional.empty(),
        Optional.empty(),
        40,
        480,
        Optional.empty(),
        VoltageDrop.BRANCH_PERCENT,
        4);
  }
}
