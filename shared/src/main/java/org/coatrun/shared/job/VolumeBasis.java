package org.coatrun.shared.job;

/** Which of the two volumes is ordered. */
public enum VolumeBasis {
  /** Area by thickness, what the trade counts. */
  AREA,
  /** The true offset around the section. */
  OFFSET
}
