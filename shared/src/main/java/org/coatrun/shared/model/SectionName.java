package org.coatrun.shared.model;

/**
 * The designation of a member's section and where it was read.
 *
 * @param name such as {@code W12X26}, or empty
 */
public record SectionName(String name, Source source) {

  /** Where a designation can stand, most trusted first. */
  public enum Source {
    PROFILE,
    MATERIAL_PROFILE,
    PROPERTY,
    TYPE_NAME,
    NAME,
    NONE
  }

  /** No designation. */
  public static final SectionName NONE = new SectionName("", Source.NONE);

  /** Whether there is a designation. */
  public boolean isGiven() {
    return source != Source.NONE;
  }
}
