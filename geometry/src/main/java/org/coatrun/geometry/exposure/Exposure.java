package org.coatrun.geometry.exposure;

import java.util.List;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.surface.SurfaceLedger;
import org.coatrun.shared.units.Area;

/**
 * What of a body is exposed.
 *
 * @param patches every patch of its surface
 * @param covers by what it is covered, sorted by element and kind
 */
public record Exposure(
    Form form, List<CoveredPatch> patches, List<Cover> covers, SurfaceLedger ledger) {

  public Exposure {
    patches = List.copyOf(patches);
    covers = List.copyOf(covers);
  }

  static Exposure of(Form form, List<CoveredPatch> patches, List<Cover> covers) {
    double inside = 0;
    double ends = 0;
    double exposed = 0;
    double covered = 0;
    for (CoveredPatch p : patches) {
      switch (p.use()) {
        case INSIDE -> inside += p.restArea();
        case END -> ends += p.restArea();
        case SIDE -> exposed += p.restArea();
      }
      covered += p.patch().area() - p.restArea();
    }
    double body = form.boundary().area() + form.holes();
    SurfaceLedger ledger =
        new SurfaceLedger(
            Area.ofSquareMetres(body),
            Area.ofSquareMetres(inside),
            Area.ofSquareMetres(ends),
            Area.ofSquareMetres(form.holes()),
            Area.ofSquareMetres(covered),
            Area.ofSquareMetres(exposed));
    return new Exposure(form, patches, covers, ledger);
  }
}
