package org.coatrun.geometry.profile;

import java.util.List;

/** What came of drawing a profile. */
public sealed interface OutlineResult {

  /**
   * Drawn.
   *
   * @param notes what had to be read otherwise than written, one sentence each; usually empty
   */
  record Drawn(SectionOutline outline, List<String> notes) implements OutlineResult {
    public Drawn {
      notes = List.copyOf(notes);
    }
  }

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
