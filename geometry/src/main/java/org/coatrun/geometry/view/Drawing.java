package org.coatrun.geometry.view;

import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Form;

/**
 * The picture of a form, made when it is asked for: nothing that is measured waits for it, and
 * nothing is kept that is asked once. Drawings are told apart by who they are. May be asked by
 * several threads.
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

  /** Draws it now and keeps the picture instead of what it is drawn from, which takes more room. */
  public synchronized void draw() {
    drawn = triangles();
    exposure = null;
  }

  /** The triangles. */
  public synchronized Triangles triangles() {
    if (drawn != null) {
      return drawn;
    }
    return exposure == null ? Triangles.of(form) : Triangles.of(exposure);
  }
}
