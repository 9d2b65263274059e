package org.coatrun.shared.rules;

import java.util.List;
import org.coatrun.shared.units.Length;

/**
 * A fluted deck by its trapezoids, for decks that the model draws flat.
 *
 * @param depth of the flutes
 * @param pitch from flute to flute
 * @param topOpening width of the rib opening at the top
 * @param bottomWidth width of the rib at the bottom
 */
public record DeckGeometry(Length depth, Length pitch, Length topOpening, Length bottomWidth) {

  public DeckGeometry {
    if (!(depth.metres() > 0) || !(pitch.metres() > 0) || !(bottomWidth.metres() > 0)) {
      throw new IllegalArgumentException("a deck needs depth, pitch and bottom width above 0");
    }
    if (topOpening.compareTo(bottomWidth) < 0 || topOpening.compareTo(pitch) >= 0) {
      throw new IllegalArgumentException(
          "a deck's rib opening lies between its bottom width and its pitch");
    }
  }

  /**
   * Length of the sheet per pitch: (pitch - top) + bottom + 2 sqrt(depth2 + ((top - bottom)/2)2).
   */
  public Length developed() {
    double side = (topOpening.metres() - bottomWidth.metres()) / 2;
    double web = Math.hypot(depth.metres(), side);
    return pitch.minus(topOpening).plus(bottomWidth).plus(Length.ofMetres(2 * web));
  }

  /** Sheet area over plan area. */
  public double areaFactor() {
    return developed().metres() / pitch.metres();
  }

  /**
   * k of t2 for one pitch, seen from below: two convex corners at the rib's bottom, two concave
   * ones at its top, each turning by the slope of the web (see {@link CoatVolume}).
   */
  public double cornerFactor() {
    double side = (topOpening.metres() - bottomWidth.metres()) / 2;
    double turn = Math.atan2(depth.metres(), side);
    return CoatVolume.cornerFactor(List.of(turn, turn, -turn, -turn));
  }

  /**
   * Mean depth of the voids between the sheet and what it lies on, where flutes run across: of each
   * pitch what the rib's trapezoid leaves.
   */
  public Length voidDepth() {
    double ribs = (topOpening.metres() + bottomWidth.metres()) / 2 / pitch.metres();
    return depth.times(1 - ribs);
  }
}
