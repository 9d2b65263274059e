package org.coatrun.geometry.solid;

/**
 * How near is the same, in metres.
 *
 * @param plane a point this near to a plane lies on it
 * @param weld points this near are one
 * @param snap noding tolerance of overlays
 * @param drop pieces smaller than this are nothing, m²
 * @param face whole faces this near to a plane of the other solid are laid onto it before a cut
 * @param flat how far the points of a face may lie off its plane
 */
public record Tolerance(
    double plane, double weld, double snap, double drop, double face, double flat) {

  /**
   * For models whose coordinates are good to a hundredth of a millimetre or better; faces that miss
   * each other by that are laid together before a cut.
   *
   * <p>It does not follow the precision that a file states (ISO 16739,
   * IfcGeometricRepresentationContext). That says which points the author holds to be one, not how
   * exact the numbers are: models at hand state 1e-5 in metres and in millimetres alike, and one
   * states 1 cm for tubes with walls of 6.3 mm, which would be nothing by its word.
   */
  public static final Tolerance DEFAULT = new Tolerance(1e-7, 1e-6, 1e-7, 1e-8, 2e-5, 1e-6);

  public Tolerance {
    if (!(plane > 0 && weld >= plane && snap > 0 && drop >= 0 && face >= plane && flat > 0)) {
      throw new IllegalArgumentException("tolerances must be positive and in order");
    }
  }
}
