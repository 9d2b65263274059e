package org.coatrun.geometry.view;

import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Form;

/**
 * The picture of a form. Drawings are told apart by who they are. May be asked by several threads.
 */
public final class Drawing {

  private final Form form;
  private final Facets drawn;

  private Drawing(Form form, Facets drawn) {
    this.form = form;
    this.drawn = drawn;
  }

  /**
   * Of a form that was measured: what is covered is told from what is exposed. It is made at once,
   * as what it is made of takes more room.
   */
  public static Drawing of(Exposure exposure) {
    return new Drawing(null, Facets.of(exposure));
  }

  /** Of a form that only stands by, made whenever it is asked for. */
  public static Drawing of(Form form) {
    return new Drawing(form, null);
  }

  /** The facets, in the form's own axes. */
  Facets facets() {
    return drawn == null ? Facets.of(form) : drawn;
  }
}
