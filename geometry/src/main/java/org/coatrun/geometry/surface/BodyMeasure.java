package org.coatrun.geometry.surface;

import java.util.List;
import java.util.Optional;
import org.coatrun.geometry.build.BuildResult;
import org.coatrun.geometry.build.Part;
import org.coatrun.geometry.build.Run;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Face;
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.surface.SurfaceLedger;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;

/**
 * Areas of a body by what its faces are, before anything around it is looked at, in m² and m³.
 *
 * @param length along the member, or the longest side of the body's box where it has no way
 */
record BodyMeasure(
    double body,
    double inside,
    double ends,
    double volume,
    double length,
    Optional<Run> run,
    List<BuildResult.Note> notes) {

  static BodyMeasure of(BuildResult.Built built) {
    double body = 0;
    double inside = 0;
    double ends = 0;
    double volume = 0;
    Box box = Box.EMPTY;
    for (Part part : built.parts()) {
      for (Face face : part.solid().faces()) {
        body += face.area();
        switch (face.label().kind()) {
          case INNER_SIDE -> inside += face.area();
          case START, END -> ends += face.area();
          default -> {}
        }
      }
      volume += part.volume();
      box = box.plus(part.solid().bounds());
    }
    double length = built.run().map(Run::length).orElse(longest(box));
    return new BodyMeasure(body, inside, ends, volume, length, built.run(), built.notes());
  }

  SurfaceLedger ledger() {
    return new SurfaceLedger(
        Area.ofSquareMetres(body),
        Area.ofSquareMetres(inside),
        Area.ofSquareMetres(ends),
        Area.ZERO,
        Area.ZERO,
        Area.ofSquareMetres(body - inside - ends));
  }

  /** The section; of a tapered member the end that warms faster. */
  Optional<SectionMeasure> section() {
    return run.map(r -> section(factor(r.end()) > factor(r.start()) ? r.end() : r.start()));
  }

  private static double factor(SectionOutline outline) {
    return outline.outerPerimeter() / outline.area();
  }

  private static SectionMeasure section(SectionOutline outline) {
    Length contour = Length.ofMetres(outline.outerPerimeter());
    Length box = Length.ofMetres(outline.bounds().perimeter());
    return new SectionMeasure(
        Area.ofSquareMetres(outline.area()), contour, contour, box, box, outline.basis());
  }

  private static double longest(Box box) {
    return Math.max(
        box.maxX() - box.minX(), Math.max(box.maxY() - box.minY(), box.maxZ() - box.minZ()));
  }
}
