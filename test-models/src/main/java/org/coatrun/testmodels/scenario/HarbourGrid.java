package org.coatrun.testmodels.scenario;

import java.util.List;
import org.coatrun.testmodels.erect.SlabMakeUp;
import org.coatrun.testmodels.section.IShape;
import org.coatrun.testmodels.section.Section;
import org.coatrun.testmodels.section.Sections;

/**
 * Lines and heights of the ferry terminal offices: four bays of 7.5 m along x, three of 6.5, 7 and
 * 6.5 m along y, the core in the third bay of the middle row.
 */
final class HarbourGrid {
  static final double[] X = {0, 7.5, 15, 22.5, 30};
  static final double[] Y = {0, 6.5, 13.5, 20};
  static final double[] LEVELS = {0, 4.5, 8.5, 12.5, 16.5, 20.5, 24.0};
  static final List<String> NAMES =
      List.of("Level 1", "Level 2", "Level 3", "Level 4", "Level 5", "Roof", "Penthouse roof");
  static final int ROOF = 5;
  static final int PENTHOUSE = 6;
  static final double INCH = 0.0254;
  static final double GAP = 0.012;
  static final double WALL = 0.15;
  static final double EDGE = 0.15;
  static final double SPLICE = 1.2;
  static final double SEAT = 2.5 * INCH;
  static final double BASE = -0.25;

  private HarbourGrid() {}

  /** Returns the top of steel under the floor of a level. */
  static double steel(int level) {
    return LEVELS[level] - SlabMakeUp.compositeDeck().thickness();
  }

  /** Returns the name of a grid point, such as {@code B3}. */
  static String point(int x, int y) {
    return "ABCD".charAt(y) + Integer.toString(x + 1);
  }

  /** Tells whether a core wall stands at a grid point. */
  static boolean isCore(int x, int y) {
    return (x == 2 || x == 3) && (y == 1 || y == 2);
  }

  /** Tells whether a bay, named by its lower left point, is the core. */
  static boolean isCoreBay(int x, int y) {
    return x == 2 && y == 1;
  }

  /** Returns the column section that a floor's beams meet. */
  static Section column(int x, int level) {
    if (x == 4) {
      return Sections.HSS8X8X1_2;
    }
    return level <= 2 ? Sections.W12X87 : level <= 4 ? Sections.W12X65 : Sections.W12X58;
  }

  /**
   * Returns how far a girder stops from a grid line, where it meets a column's flange or a wall.
   */
  static double flangeFace(int x, int y, int level) {
    return isCore(x, y) ? WALL : column(x, level).depth() / 2;
  }

  /** Returns how far a beam along y stops from a grid line, at a column's web or a wall. */
  static double webFace(int x, int y, int level) {
    if (isCore(x, y)) {
      return WALL;
    }
    Section column = column(x, level);
    return column instanceof IShape i ? i.web() / 2 : column.depth() / 2;
  }
}
