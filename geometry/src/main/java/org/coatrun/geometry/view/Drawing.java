package org.coatrun.geometry.view;

import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Form;

/**
 * The picture of a form, made when it is first asked for: nothing that is measured waits for it.
 * Drawings are told apart by who they are. May be asked by several threads.
 */
public final class Drawing {

  private final Form form;
  private Exposure exposure;
  private Triangles drawn;

  private Drawing(Form form, Exposure exposure) {
    this.form = form;
    this.exposure = exposure;
  }

  /** Of a form that was measured: what is covered is told from what is exposed. */
  public static Drawing of(Form form, Exposure exposure) {
    return new Drawing(form, exposure);
  }

  /** Of a form that only stands by. */
  public static Drawing of(Form form) {
    return new Drawing(form, null);
  }

  /** The triangles. */
  public synchronized Triangles triangles() {
    if (drawn == null) {
      drawn = exposure == null ? Triangles.of(form) : Triangles.of(exposure);
      exposure = null;
    }
    return drawn;
  }
}
