package org.coatrun.geometry.surface;

import java.util.List;
import java.util.Optional;
import org.coatrun.geometry.view.Drawing;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.surface.FluteVoid;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.surface.SoffitMeasure;
import org.coatrun.shared.surface.SurfaceLedger;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/** What was measured in a setting: the same for all elements that stand in one like it. */
sealed interface Reading {

  /**
   * Measured.
   *
   * @param covers each by the place of the neighbour in the setting
   * @param fluteVoids likewise
   * @param drawing where a picture is wanted, and could be made
   */
  record Measured(
      Length length,
      Volume volume,
      SurfaceLedger ledger,
      Optional<SectionMeasure> section,
      List<Cover> covers,
      List<FluteVoid> fluteVoids,
      Optional<SoffitMeasure> soffit,
      Optional<Drawing> drawing)
      implements Reading {

    /** Of an element, with the numbers of its own neighbours. */
    Measurement of(ElementId id, List<ElementId> near) {
      return new Measurement.Measured(
          id,
          length,
          volume,
          ledger,
          section,
          covers.stream().map(c -> new Cover(named(c.by(), near), c.kind(), c.area())).toList(),
          fluteVoids.stream()
              .map(v -> new FluteVoid(named(v.deck(), near), v.flange(), v.soffit(), v.volume()))
              .toList(),
          soffit);
    }

    private static ElementId named(ElementId place, List<ElementId> near) {
      return near.get((int) place.step());
    }
  }

  /** Not measured. */
  record Failed(SurfaceFinding code, String kind, String sentence) implements Reading {}
}
