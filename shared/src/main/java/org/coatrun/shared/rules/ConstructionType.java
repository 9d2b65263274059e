package org.coatrun.shared.rules;

import java.util.Optional;
import org.coatrun.shared.units.FireDuration;

/**
 * Construction types and the hours they ask of frame, floors and roof.
 *
 * <p>Source: IBC Table 601. Heavy timber (IV-HT) states no hours for steel; a rule of the job must.
 */
public enum ConstructionType {
  IA("I-A", 3, 2, 1.5),
  IB("I-B", 2, 2, 1),
  IIA("II-A", 1, 1, 1),
  IIB("II-B", 0, 0, 0),
  IIIA("III-A", 1, 1, 1),
  IIIB("III-B", 0, 0, 0),
  IV_HT("IV-HT", Double.NaN, Double.NaN, Double.NaN),
  VA("V-A", 1, 1, 1),
  VB("V-B", 0, 0, 0);

  private final String code;
  private final double frameHours;
  private final double floorHours;
  private final double roofHours;

  ConstructionType(String code, double frameHours, double floorHours, double roofHours) {
    this.code = code;
    this.frameHours = frameHours;
    this.floorHours = floorHours;
    this.roofHours = roofHours;
  }

  /** The type as the code writes it, such as {@code I-A}. */
  public String code() {
    return code;
  }

  /** Hours of the primary structural frame; empty where the table states none. */
  public Optional<FireDuration> frame() {
    return hours(frameHours);
  }

  /** Hours of floor construction and its secondary members; empty where the table states none. */
  public Optional<FireDuration> floor() {
    return hours(floorHours);
  }

  /** Hours of roof construction and its secondary members; empty where the table states none. */
  public Optional<FireDuration> roof() {
    return hours(roofHours);
  }

  /** Whether a frame that supports only a roof may be one hour less (footnote a: I-A and I-B). */
  public boolean relievesRoofFrames() {
    return this == IA || this == IB;
  }

  private static Optional<FireDuration> hours(double hours) {
    return Double.isNaN(hours) ? Optional.empty() : Optional.of(FireDuration.ofHours(hours));
  }

  /** As files write it. */
  @Override
  public String toString() {
    return code;
  }
}
