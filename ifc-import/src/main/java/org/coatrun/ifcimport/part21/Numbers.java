package org.coatrun.ifcimport.part21;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.coatrun.shared.finding.FileFinding;

/** Reads integers and reals: {@code 1}, {@code +1.}, {@code .5}, {@code 1E-05}, {@code 1.E-05}. */
final class Numbers {

  /** Powers of ten that a double holds exactly. */
  private static final double[] TEN = new double[23];

  static {
    double power = 1;
    for (int i = 0; i < TEN.length; i++) {
      TEN[i] = power;
      power *= 10;
    }
  }

  private Numbers() {}

  /** The value in {@code bytes[start, end)}; faulty, with a fault, where that is no number. */
  static Value parse(byte[] bytes, int start, int end, FaultSink faults) {
    int i = start;
    boolean negative = bytes[i] == '-';
    if (negative || bytes[i] == '+') {
      i++;
    }
    long mantissa = 0;
    int digits = 0;
    int significant = 0;
    int scale = 0;
    boolean point = false;
    for (; i < end; i++) {
      int c = bytes[i];
      if (Ascii.isDigit(c)) {
        digits++;
        if (significant > 0 || c != '0') {
          significant++;
        }
        if (significant <= 18) {
          mantissa = mantissa * 10 + (c - '0');
        }
        scale += point ? 1 : 0;
      } else if (c == '.' && !point) {
        point = true;
      } else {
        break;
      }
    }
    if (digits == 0) {
      return fault(bytes, start, end, faults);
    }
    if (i == end && !point && significant <= 18) {
      return new Value.Int(negative ? -mantissa : mantissa);
    }
    return real(bytes, start, end, i, negative, mantissa, significant, scale, faults);
  }

  private static Value real(
      byte[] bytes,
      int start,
      int end,
      int tail,
      boolean negative,
      long mantissa,
      int significant,
      int scale,
      FaultSink faults) {
    int exponent = 0;
    if (tail < end) {
      exponent = exponent(bytes, tail, end);
      if (exponent == Integer.MIN_VALUE) {
        return fault(bytes, start, end, faults);
      }
    }
    int power = exponent - scale;
    // Both factors are exact, so the one rounding of the product or quotient is the right one.
    if (significant <= 15 && power >= -22 && power <= 22) {
      double m = (double) mantissa;
      double exact = power < 0 ? m / TEN[-power] : m * TEN[power];
      return new Value.Real(negative ? -exact : exact);
    }
    String text = new String(bytes, start, end - start, StandardCharsets.ISO_8859_1);
    return whole(text, start, end, tail, bytes, faults);
  }

  private static Value whole(
      String text, int start, int end, int tail, byte[] bytes, FaultSink faults) {
    if (tail == end && text.indexOf('.') < 0) {
      try {
        return new Value.Int(Long.parseLong(text));
      } catch (NumberFormatException e) {
        return new Value.Real(Double.parseDouble(text)); // an integer beyond 64 bits
      }
    }
    double number = Double.parseDouble(text);
    return Double.isFinite(number) ? new Value.Real(number) : fault(bytes, start, end, faults);
  }

  /** The exponent after {@code E}, clamped, or the smallest integer where there is none. */
  private static int exponent(byte[] bytes, int at, int end) {
    int i = at + 1;
    if ((bytes[at] != 'E' && bytes[at] != 'e') || i == end) {
      return Integer.MIN_VALUE;
    }
    boolean negative = bytes[i] == '-';
    if (negative || bytes[i] == '+') {
      i++;
    }
    int value = 0;
    int digits = 0;
    for (; i < end && Ascii.isDigit(bytes[i]); i++, digits++) {
      value = Math.min(value * 10 + (bytes[i] - '0'), 99_999);
    }
    if (digits == 0 || i < end) {
      return Integer.MIN_VALUE;
    }
    return negative ? -value : value;
  }

  private static Value fault(byte[] bytes, int start, int end, FaultSink faults) {
    String text = Excerpt.of(bytes, start, end);
    String upper = text.toUpperCase(Locale.ROOT);
    boolean infinite =
        upper.contains("NAN") || upper.contains("INF") || upper.contains("IND") || isHuge(upper);
    FileFinding code = infinite ? FileFinding.NOT_A_NUMBER : FileFinding.BAD_VALUE;
    String reason = infinite ? "not a finite number" : "not a number";
    faults.fault(code, "\"" + text + "\" is " + reason);
    return new Value.Faulty(text, reason);
  }

  private static boolean isHuge(String text) {
    try {
      return Double.isInfinite(Double.parseDouble(text));
    } catch (NumberFormatException e) {
      return false;
    }
  }
}
