package org.coatrun.shared.listing;

/** The form of the section factor that a table goes by. */
public enum FactorForm {
  /** Weight over heated perimeter, lb/ft/in. */
  W_D("W/D", "lb/ft/in"),
  /** Area over heated perimeter, inches. */
  A_P("A/P", "in"),
  /** Heated perimeter over area, 1/m. */
  HP_A("Hp/A", "1/m");

  private final String word;
  private final String unit;

  FactorForm(String word, String unit) {
    this.word = word;
    this.unit = unit;
  }

  /** Unit of its numbers. */
  public String unit() {
    return unit;
  }

  /** As files write it. */
  @Override
  public String toString() {
    return word;
  }
}
