package org.coatrun.shared.rules;

import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Pressure;

/**
 * Whether an I-shape is compact in bending.
 *
 * <p>Source: AISC 360 Table B4.1b, cases 10 and 15 (from memory): b/(2 tf) at most 0.38 sqrt(E/Fy),
 * h/tw at most 3.76 sqrt(E/Fy), E = 29,000 ksi.
 */
public final class Compactness {

  private static final double ELASTIC_MODULUS_PSI = 29e6;
  private static final double FLANGE = 0.38;
  private static final double WEB = 3.76;

  private Compactness() {}

  /**
   * Whether flange and web are both compact.
   *
   * @param clearWeb depth of the web between fillets
   */
  public static boolean isCompact(
      Length flange, Length flangeThickness, Length clearWeb, Length web, Pressure yield) {
    double root = Math.sqrt(ELASTIC_MODULUS_PSI / yield.psi());
    boolean flangeOk = flange.metres() / (2 * flangeThickness.metres()) <= FLANGE * root;
    return flangeOk && clearWeb.metres() / web.metres() <= WEB * root;
  }
}
