package org.coatrun.shared.estimate;

import java.util.Optional;
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.units.Density;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.LinearDensity;
import org.coatrun.shared.units.Mass;
import org.coatrun.shared.units.Volume;

/**
 * Weight of a member, and where it comes from.
 *
 * @param nominal the weight per length that the designation states, where it is used
 * @param disagreement how much heavier the designation says the section is than its geometry, as a
 *     share of the geometry's weight; empty where one of them is missing
 */
public record Weight(Mass mass, Optional<LinearDensity> nominal, Optional<Double> disagreement) {

  /** Density of steel: 7,850 kg/m3 (EN 1991-1-1 table A.4 gives 77.0 to 78.5 kN/m3). */
  public static final Density STEEL = Density.ofKilogramsPerCubicMetre(7850);

  /** Above this share, name and geometry disagree, and someone should look (common practice). */
  public static final double WORTH_A_LOOK = 0.03;

  /** Above this share, the number in the name is no weight of this section, and is not used. */
  public static final double NOT_CREDIBLE = 0.25;

  /**
   * The weight of a member.
   *
   * @param designation of its section, or empty
   * @param section as measured, where it has one
   * @return nominal weight by length where the designation states one within 25 % of the
   *     geometry's, else volume by 7,850 kg/m3
   */
  public static Weight of(
      String designation, Length length, Volume volume, Optional<SectionMeasure> section) {
    Mass byVolume = Mass.ofKilograms(volume.cubicMetres() * STEEL.kilogramsPerCubicMetre());
    Optional<LinearDensity> stated = NominalWeight.of(designation);
    Optional<Double> apart =
        stated.flatMap(s -> section.map(measured -> s.kilogramsPerMetre() / drawn(measured) - 1));
    boolean credible = apart.isPresent() && Math.abs(apart.get()) <= NOT_CREDIBLE;
    if (!credible) {
      return new Weight(byVolume, Optional.empty(), apart);
    }
    double kilograms = stated.orElseThrow().kilogramsPerMetre() * length.metres();
    return new Weight(Mass.ofKilograms(kilograms), stated, apart);
  }

  /** Whether name and geometry disagree by more than {@link #WORTH_A_LOOK}. */
  public boolean isDoubtful() {
    return disagreement.isPresent() && Math.abs(disagreement.get()) > WORTH_A_LOOK;
  }

  private static double drawn(SectionMeasure section) {
    return section.steel().squareMetres() * STEEL.kilogramsPerCubicMetre();
  }
}
