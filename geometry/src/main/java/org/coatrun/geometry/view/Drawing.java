package org.coatrun.geometry.view;

import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Tolerance;
import org.locationtech.jts.geom.TopologyException;

/**
 * The picture of a form, made when it is first asked for: nothing that is measured waits for it.
 * Drawings are told apart by who they are. May be asked by several threads.
 */
public final class Drawing {

  private final Form form;
  private Exposure exposure;
  private Repeats repeats;
  private Triangles drawn;

  private Drawing(Form form, Exposure exposure, Repeats repeats) {
    this.form = form;
    this.exposure = exposure;
    this.repeats = repeats;
  }

  /**
   * Of a form that was measured: what is covered is told from what is exposed.
   *
   * @param repeats of all drawings of a building
   */
  public static Drawing of(Form form, Exposure exposure, Repeats repeats) {
    return new Drawing(form, exposure, repeats);
  }

  /** Of a form that only stands by. */
  public static Drawing of(Form form) {
    return new Drawing(form, null, new Repeats());
  }

  /** The triangles; where what covers the form cannot be drawn, all of it as if it stood by. */
  public synchronized Triangles triangles() {
    if (drawn == null) {
      drawn = drawn();
      exposure = null;
      repeats = null;
    }
    return drawn;
  }

  private Triangles drawn() {
    if (exposure == null) {
      return Triangles.of(form, repeats);
    }
    try {
      return Triangles.of(exposure, new Kernel(Tolerance.DEFAULT), repeats);
    } catch (IllegalArgumentException | ArithmeticException | TopologyException e) {
      return Triangles.of(form, repeats);
    }
  }
}
