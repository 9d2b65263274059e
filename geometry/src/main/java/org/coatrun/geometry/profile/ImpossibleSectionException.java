package org.coatrun.geometry.profile;

/** Dimensions that no section can have; never leaves the package. */
final class ImpossibleSectionException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** Whether the section could be drawn if its corners were sharp. */
  private final boolean radiusOnly;

  private ImpossibleSectionException(String message, boolean radiusOnly) {
    super(message);
    this.radiusOnly = radiusOnly;
  }

  static ImpossibleSectionException radius(double radius) {
    return new ImpossibleSectionException(
        "a corner radius of " + millimetres(radius) + " has no room", true);
  }

  /** Refuses the section where {@code holds} is false. */
  static void require(boolean holds, String rule, double... values) {
    if (!holds) {
      var text = new StringBuilder(rule).append(" does not hold for");
      for (double v : values) {
        text.append(' ').append(millimetres(v));
      }
      throw new ImpossibleSectionException(text.toString(), false);
    }
  }

  static ImpossibleSectionException of(String sentence) {
    return new ImpossibleSectionException(sentence, false);
  }

  boolean radiusOnly() {
    return radiusOnly;
  }

  private static String millimetres(double metres) {
    return String.format(java.util.Locale.ROOT, "%.4g mm", 1000 * metres);
  }
}
