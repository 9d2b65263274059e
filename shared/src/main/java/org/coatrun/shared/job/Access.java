package org.coatrun.shared.job;

/** How the crew reaches the steel. */
public enum Access {
  /** Standing on the floor. */
  FLOOR,
  /** From the floor with a pole gun. */
  POLE_GUN,
  /** From a lift. */
  LIFT,
  /** From a scaffold. */
  SCAFFOLD
}
