package org.coatrun.shared.yaml;

import java.util.Optional;

/** Checks a value against the least and greatest that its key allows. */
final class Bounds {

  private Bounds() {}

  /**
   * The value, where it is within the bounds of its key.
   *
   * @throws IllegalArgumentException with a sentence where it is not
   */
  static Object check(Object value, String written, Key key) {
    if (!key.least().isEmpty() && compare(value, parse(key.least(), value, key)) < 0) {
      throw new IllegalArgumentException(
          "'" + written + "' is impossible here; the least is " + key.least() + ".");
    }
    if (!key.most().isEmpty() && compare(value, parse(key.most(), value, key)) > 0) {
      throw new IllegalArgumentException(
          "'" + written + "' is impossible here; the most is " + key.most() + ".");
    }
    return value;
  }

  private static Object parse(String bound, Object like, Key key) {
    Optional<Dimension> dimension = Dimension.of(like.getClass());
    if (dimension.isPresent()) {
      return QuantityText.parse(bound, dimension.get());
    }
    double number =
        key.unit().isEmpty() ? Double.parseDouble(bound) : QuantityText.parse(bound, key.unit());
    return like instanceof Integer ? (Object) (int) number : (Object) number;
  }

  @SuppressWarnings("unchecked") // both sides are of one type: the bound is parsed as the value is
  private static int compare(Object a, Object b) {
    return ((Comparable<Object>) a).compareTo(b);
  }
}
