package org.coatrun.shared.rules;

import java.util.Arrays;
import java.util.Optional;

/**
 * Copper conductors by size, with their resistance per 1,000 ft at 75 C.
 *
 * <p>Source: NEC chapter 9 Table 8, stranded, uncoated (2011 edition), and its circular mils.
 */
public enum Conductor {
  AWG_14("14", 3.14, 4110),
  AWG_12("12", 1.98, 6530),
  AWG_10("10", 1.24, 10380),
  AWG_8("8", 0.778, 16510),
  AWG_6("6", 0.491, 26240),
  AWG_4("4", 0.308, 41740),
  AWG_3("3", 0.245, 52620),
  AWG_2("2", 0.194, 66360),
  AWG_1("1", 0.154, 83690),
  AWG_1_0("1/0", 0.122, 105600),
  AWG_2_0("2/0", 0.0967, 133100),
  AWG_3_0("3/0", 0.0766, 167800),
  AWG_4_0("4/0", 0.0608, 211600),
  KCMIL_250("250", 0.0515, 250000),
  KCMIL_500("500", 0.0258, 500000);

  private final String size;
  private final double ohmsPerThousandFeet;
  private final double circularMils;

  Conductor(String size, double ohmsPerThousandFeet, double circularMils) {
    this.size = size;
    this.ohmsPerThousandFeet = ohmsPerThousandFeet;
    this.circularMils = circularMils;
  }

  /** AWG number, or thousands of circular mils from 250 up. */
  public String size() {
    return size;
  }

  /** Resistance per 1,000 ft at 75 C. */
  public double ohmsPerThousandFeet() {
    return ohmsPerThousandFeet;
  }

  /** Cross-section in circular mils. */
  public double circularMils() {
    return circularMils;
  }

  /** The conductor of a size such as {@code 8} or {@code 1/0}. */
  public static Optional<Conductor> ofSize(String size) {
    return Arrays.stream(values()).filter(c -> c.size.equals(size)).findFirst();
  }

  /** As files write it. */
  @Override
  public String toString() {
    return size;
  }
}
