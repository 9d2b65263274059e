package org.coatrun.shared.rules;

import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Density;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.LinearDensity;
import org.coatrun.shared.units.SectionFactor;

/** The forms of the section factor: W/D, A/P and Hp/A. */
public final class SectionFactors {

  /** Steel by which area becomes weight: 490 lb/ft3 (7,849 kg/m3). */
  public static final Density STEEL = Density.ofPoundsPerCubicFoot(490);

  private SectionFactors() {}

  /**
   * W/D from a stated weight: weight per foot over heated perimeter.
   *
   * <p>Source: IBC 722.5.1.1: W the average weight in lb/ft, D the inside perimeter of the
   * protection in inches.
   *
   * @throws IllegalArgumentException where the perimeter is not positive
   */
  public static SectionFactor byWeight(LinearDensity weight, Length heatedPerimeter) {
    return SectionFactor.ofWeightOverPerimeter(weight.poundsPerFoot() / heatedPerimeter.inches());
  }

  /** Hp/A from an area: heated perimeter over area of steel; EN 1993-1-2 4.2.5 (Am/V). */
  public static SectionFactor byArea(Area steel, Length heatedPerimeter) {
    return SectionFactor.of(heatedPerimeter, steel);
  }

  /** The weight of an area of steel at 490 lb/ft3. */
  public static LinearDensity weightOf(Area steel) {
    return LinearDensity.ofKilogramsPerMetre(steel.squareMetres() * STEEL.kilogramsPerCubicMetre());
  }

  /**
   * The perimeter of a W-shape with sharp inner corners, all round: 2 d + 4 b - 2 tw.
   *
   * <p>Source: D of 780 CMR Table 721.5.1(1) (numbering of the IBC 2009 generation) follows it.
   */
  public static Length contourFourSided(Length depth, Length flange, Length web) {
    return depth.times(2).plus(flange.times(4)).minus(web.times(2));
  }

  /** The same with the top of the top flange covered: 2 d + 3 b - 2 tw (IBC Figure 722.5.2). */
  public static Length contourThreeSided(Length depth, Length flange, Length web) {
    return contourFourSided(depth, flange, web).minus(flange);
  }

  /** What four root fillets of radius r take off the contour: (8 - 2 pi) r. */
  public static Length filletSaving(Length radius) {
    return radius.times(8 - 2 * Math.PI);
  }

  /** The box around a section, all round: 2 d + 2 b. */
  public static Length boxFourSided(Length depth, Length flange) {
    return depth.plus(flange).times(2);
  }

  /** The box with the top covered: 2 d + b. */
  public static Length boxThreeSided(Length depth, Length flange) {
    return depth.times(2).plus(flange);
  }
}
