package org.coatrun.shared.surface;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.frame.Frame;
import org.coatrun.shared.model.ElementId;

/**
 * What was measured of a building: each steel member and deck, and what was found amiss.
 *
 * @param measurements by element, sorted; elements that nothing was tried on are missing
 * @param findings sorted
 * @param frame how the measured members hang together
 */
public record Surfaces(
    SortedMap<ElementId, Measurement> measurements, List<Finding> findings, Frame frame) {

  public Surfaces {
    measurements = Collections.unmodifiableSortedMap(new TreeMap<>(measurements));
    findings = findings.stream().sorted().toList();
  }

  /** From any map of measurements, with nothing said of the frame. */
  public static Surfaces of(Map<ElementId, Measurement> measurements, List<Finding> findings) {
    return new Surfaces(new TreeMap<>(measurements), findings, Frame.empty());
  }

  /** What came of measuring an element; empty where nothing was tried. */
  public Optional<Measurement> of(ElementId id) {
    return Optional.ofNullable(measurements.get(id));
  }
}
