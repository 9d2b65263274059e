package org.coatrun.shared.line;

import java.util.Comparator;
import java.util.List;
import org.coatrun.shared.units.Length;

/**
 * The pieces that lines are made of.
 *
 * @param hoseSections lengths of hose sections, each a multiple of the shortest
 * @param pipeLength length of a piece of standpipe
 * @param clampSpacing greatest distance of clamps or braces along level pipe; rising pipe has one
 *     at each floor besides
 * @param poleGunSection length of a section of pole gun
 * @param poleGunTip length of the flexible hose at its tip
 * @param inside inside diameter of pipe and transfer hose
 */
public record LineStock(
    List<Length> hoseSections,
    Length pipeLength,
    Length clampSpacing,
    Length poleGunSection,
    Length poleGunTip,
    Length inside) {

  public LineStock {
    hoseSections = hoseSections.stream().sorted(Comparator.reverseOrder()).toList();
    if (hoseSections.isEmpty() || hoseSections.get(hoseSections.size() - 1).metres() <= 0) {
      throw new IllegalArgumentException("no hose section of any length");
    }
    if (pipeLength.metres() <= 0 || clampSpacing.metres() <= 0 || poleGunSection.metres() <= 0) {
      throw new IllegalArgumentException("pieces of line without a length");
    }
  }

  /** Hose of 25 and 50 ft, pipe of 10 ft clamped as often, pole gun of 3 ft (common practice). */
  public static LineStock commonPractice() {
    return new LineStock(
        List.of(Length.ofFeet(25), Length.ofFeet(50)),
        Length.ofFeet(10),
        Length.ofFeet(10),
        Length.ofFeet(3),
        Length.ofInches(18),
        Length.ofInches(3));
  }
}
