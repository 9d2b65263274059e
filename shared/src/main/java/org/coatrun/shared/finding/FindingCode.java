package org.coatrun.shared.finding;

/**
 * A kind of finding. Codes are stable: they never change their meaning and are never used again.
 * Hundreds tell the area: 1xx the file, 2xx the model, 3xx surfaces and sections, 4xx ratings,
 * thickness and material, 5xx the line.
 */
public interface FindingCode {

  /** The stable code, a letter and three digits, such as {@code F101}. */
  String code();

  Severity severity();

  /** What it means, in one sentence without names or numbers. */
  String meaning();

  /** What the user should do. */
  String remedy();
}
