package org.coatrun.shared.listing;

import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.SectionFactor;
import org.coatrun.shared.yaml.Key;

/** A tested beam that others may stand in for by substitution (IBC 722.5.2.2). */
public record ListedBeam(
    @Key(note = "its section") String section,
    @Key(note = "its W/D, lb/ft/in", least = "0.1", most = "20") double factor,
    @Key(note = "restrained, unrestrained or either", fallback = "either") Restraint restraint,
    @Key(note = "rating", least = "15 min", most = "4 h") FireDuration hours,
    @Key(note = "tested thickness", least = "1/16 in", most = "6 in") Length thickness) {

  /** W/D as a section factor. */
  public SectionFactor sectionFactor() {
    return SectionFactor.ofWeightOverPerimeter(factor);
  }
}
