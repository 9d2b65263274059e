package org.coatrun.shared.finding;

/** How much a finding matters. */
public enum Severity {
  /** Good to know; no number depends on it. */
  NOTE,
  /** A number may be off; someone should look. */
  WARNING,
  /** Something is missing from the numbers. */
  ERROR
}
