package org.coatrun.shared.job;

/** A day of the week. */
public enum Weekday {
  /** Monday. */
  MONDAY,
  /** Tuesday. */
  TUESDAY,
  /** Wednesday. */
  WEDNESDAY,
  /** Thursday. */
  THURSDAY,
  /** Friday. */
  FRIDAY,
  /** Saturday. */
  SATURDAY,
  /** Sunday. */
  SUNDAY
}
