package org.coatrun.geometry.profile;

import java.util.List;
import org.coatrun.shared.finding.SurfaceFinding;

/** What came of drawing a profile. */
public sealed interface OutlineResult {

  /**
   * Drawn.
   *
   * @param notes what had to be read otherwise than written; usually empty
   */
  record Drawn(SectionOutline outline, List<Note> notes) implements OutlineResult {
    public Drawn {
      notes = List.copyOf(notes);
    }
  }

  /**
   * Something read otherwise than written.
   *
   * @param words what, without a full stop
   */
  record Note(SurfaceFinding code, String words) {}

  /**
   * Not drawn: dimensions that no section can have.
   *
   * @param sentence which, with their values
   */
  record Impossible(String sentence) implements OutlineResult {}

  /**
   * Not drawn: a kind of profile or curve that is not handled.
   *
   * @param kind its name in the model
   */
  record NotHandled(String kind) implements OutlineResult {}
}
