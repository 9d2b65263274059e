package org.coatrun.shared.job;

/** The units that reports are written in; the program computes in SI. */
public enum UnitSystem {
  /** Feet, inches, pounds, board feet. */
  US,
  /** Metres, millimetres, kilograms, litres. */
  SI
}
