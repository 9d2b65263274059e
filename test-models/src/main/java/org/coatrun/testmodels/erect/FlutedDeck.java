package org.coatrun.testmodels.erect;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.shape.Vec2;

/**
 * A deck profile with its flutes: flat below, rib, flat above, rib.
 *
 * @param depth of the flutes, sheet included
 * @param bottom width of the lower flat
 * @param top width of the upper flat
 * @param slope width of an inclined web in plan
 * @param sheet thickness
 */
public record FlutedDeck(double depth, double bottom, double top, double slope, double sheet) {
  private static final double INCH = 0.0254;

  /** A 2 in composite deck of 12 in pitch, 18 gauge. */
  public static FlutedDeck composite() {
    return new FlutedDeck(2 * INCH, 5 * INCH, 5 * INCH, INCH, 0.0012);
  }

  /** A 1 1/2 in roof deck of 6 in pitch, 22 gauge. */
  public static FlutedDeck roof() {
    return new FlutedDeck(1.5 * INCH, 1.75 * INCH, 3.5 * INCH, 0.375 * INCH, 0.00075);
  }

  /** Returns the pitch in metres. */
  public double pitch() {
    return bottom + top + 2 * slope;
  }

  /** Returns the sheet between two places, its underside at 0. */
  public Outline sheet(double from, double to) {
    List<Vec2> corners = new ArrayList<>(line(from, to, 0));
    List<Vec2> upper = new ArrayList<>(line(from, to, sheet));
    Collections.reverse(upper);
    corners.addAll(upper);
    return new Outline("deck sheet", corners);
  }

  /** Returns the concrete on the sheet, up to a height above the sheet's underside. */
  public Outline concrete(double from, double to, double height) {
    List<Vec2> corners = new ArrayList<>(line(from, to, sheet));
    corners.add(new Vec2(to, height));
    corners.add(new Vec2(from, height));
    return new Outline("concrete on deck", corners);
  }

  /** The under or upper line of the sheet: whole flutes, the ends flat below. */
  private List<Vec2> line(double from, double to, double lift) {
    double high = depth - sheet + lift;
    List<Vec2> line = new ArrayList<>();
    line.add(new Vec2(from, lift));
    int flutes = (int) Math.floor((to - from - bottom) / pitch() + 1e-9);
    double first = from + (to - from - flutes * pitch() - bottom) / 2 + bottom;
    for (int i = 0; i < flutes; i++) {
      double x = first + i * pitch();
      line.add(new Vec2(x, lift));
      line.add(new Vec2(x + slope, high));
      line.add(new Vec2(x + slope + top, high));
      line.add(new Vec2(x + 2 * slope + top, lift));
    }
    line.add(new Vec2(to, lift));
    return line;
  }
}
