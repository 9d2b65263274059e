package org.coatrun.testmodels.step;

/**
 * A value that is written as it stands: an enumeration, {@code $}, {@code *} or a typed value.
 *
 * @param text the text in the file
 */
public record Token(String text) {
  /** An optional attribute without a value. */
  public static final Token UNSET = new Token("$");

  /** An attribute that the subtype derives. */
  public static final Token DERIVED = new Token("*");

  /** Makes an enumeration value. */
  public static Token of(String name) {
    return new Token("." + name + ".");
  }

  /** Makes a typed text such as {@code IFCLABEL('x')}. */
  public static Token text(String type, String value) {
    return new Token(type + "('" + StepText.encode(value) + "')");
  }

  /** Makes a typed number such as {@code IFCLENGTHMEASURE(2.5)}. */
  public static Token number(String type, double value) {
    return new Token(type + "(" + StepNumber.text(value) + ")");
  }

  /** Makes a typed truth value. */
  public static Token truth(String type, boolean value) {
    return new Token(type + (value ? "(.T.)" : "(.F.)"));
  }
}
