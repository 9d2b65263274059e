package org.coatrun.shared.line;

/**
 * What the choice of a line weighs, in one currency. Only the ratios matter for the choice. The
 * defaults are estimates of our own without a source, chosen so that a move of the machine is a
 * lost shift of a crew; a job's own costs should take their place.
 *
 * @param machine setting up the machine once, bags and feeders included
 * @param riser setting up one riser: supports, clean-outs
 * @param outlet moving hose and nozzle to one outlet of one floor
 * @param pipePerMetre pipe laid and taken up, couplings included
 * @param hosePerMetre hose dragged into place
 * @param breakdown yield lost in flexible hose: cost for one cubic metre of coating and one metre
 * @param haulPerMetre bags carried between truck and machine
 * @param feederPerMetre power cable and water hose to the machine
 */
public record LineCosts(
    double machine,
    double riser,
    double outlet,
    double pipePerMetre,
    double hosePerMetre,
    double breakdown,
    double haulPerMetre,
    double feederPerMetre) {

  public LineCosts {
    for (double c :
        new double[] {
          machine,
          riser,
          outlet,
          pipePerMetre,
          hosePerMetre,
          breakdown,
          haulPerMetre,
          feederPerMetre
        }) {
      if (!(c >= 0) || Double.isInfinite(c)) {
        throw new IllegalArgumentException("a cost of the line that is not zero or more: " + c);
      }
    }
  }

  /** Defaults in dollars: estimates of our own, with no source. */
  public static LineCosts estimates() {
    return new LineCosts(2400, 600, 90, 22, 3, 0.15, 12, 8);
  }
}
