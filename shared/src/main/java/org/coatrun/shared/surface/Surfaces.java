package org.coatrun.shared.surface;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.frame.Frame;
import org.coatrun.shared.model.ElementId;

/**
 * What was measured of a building: each steel member and deck, and what was found amiss.
 *
 * @param measurements by element, sorted; elements that nothing was tried on are missing
 * @param findings sorted
 * @param frame how the measured members hang together
 * @param standings where each of them, and each slab, stands, sorted; what has no body is missing
 * @param extents middle line and box of each member and deck whose body could be made, sorted
 */
public record Surfaces(
    Map<ElementId, Measurement> measurements,
    List<Finding> findings,
    Frame frame,
    Map<ElementId, Standing> standings,
    Map<ElementId, Extent> extents) {

  public Surfaces {
    measurements = ElementId.sorted(measurements);
    findings = findings.stream().sorted().toList();
    standings = ElementId.sorted(standings);
    extents = ElementId.sorted(extents);
  }

  /** From any map of measurements, with nothing said of frame and place. */
  public static Surfaces of(Map<ElementId, Measurement> measurements, List<Finding> findings) {
    return new Surfaces(measurements, findings, Frame.empty(), Map.of(), Map.of());
  }

  /** What came of measuring an element; empty where nothing was tried. */
  public Optional<Measurement> of(ElementId id) {
    return Optional.ofNullable(measurements.get(id));
  }

  /** Where an element stands, where it has a body. */
  public Optional<Standing> standing(ElementId id) {
    return Optional.ofNullable(standings.get(id));
  }

  /** Where an element's middle line runs; empty where its body could not be made. */
  public Optional<Extent> extent(ElementId id) {
    return Optional.ofNullable(extents.get(id));
  }
}
