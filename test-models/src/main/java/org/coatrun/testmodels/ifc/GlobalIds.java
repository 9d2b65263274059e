package org.coatrun.testmodels.ifc;

/**
 * Gives GlobalIds that are the same in each run and never twice in one file.
 *
 * <p>A number is mixed into 128 bits (SplitMix64), marked as a random identifier of ISO/IEC 9834-8
 * (version 4), and written with IFC's 64 characters, the first of which holds two bits only.
 */
final class GlobalIds {
  private static final String ALPHABET =
      "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";

  private final long seed;
  private long elements;
  private long others;

  GlobalIds(long seed) {
    this.seed = seed;
  }

  /** Returns the next identifier of an element; the same in each schema. */
  String element() {
    return text(2 * ++elements);
  }

  /** Returns the next identifier of a relation, a property set or a type. */
  String other() {
    return text(2 * ++others + 1);
  }

  private String text(long number) {
    long low = mix(number ^ mix(seed));
    long high = mix(low + seed);
    high = (high & ~0xF000L) | 0x4000L;
    low = (low & 0x3FFFFFFFFFFFFFFFL) | 0x8000000000000000L;
    char[] out = new char[22];
    for (int i = 21; i >= 0; i--) {
      out[i] = ALPHABET.charAt((int) (low & 63));
      low = (low >>> 6) | (high << 58);
      high >>>= 6;
    }
    return new String(out);
  }

  private static long mix(long value) {
    long z = value + 0x9E3779B97F4A7C15L;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
