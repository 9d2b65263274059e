package org.coatrun.geometry.build;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.finding.SurfaceFinding;

/** What came of making solids of a shape. */
public sealed interface BuildResult {

  /**
   * Made.
   *
   * @param parts at least one
   * @param run how the section is carried along, where the shape is one sweep
   * @param notes what had to be read otherwise than written
   */
  record Built(List<Part> parts, Optional<Run> run, List<Note> notes) implements BuildResult {
    public Built {
      parts = List.copyOf(parts);
      notes = List.copyOf(notes);
    }
  }

  /**
   * Not made.
   *
   * @param kind what stands in the way, by its name in the model
   */
  record NotBuilt(SurfaceFinding code, String kind, String sentence) implements BuildResult {}

  /** Something read otherwise than written. */
  record Note(SurfaceFinding code, String sentence) {}
}
