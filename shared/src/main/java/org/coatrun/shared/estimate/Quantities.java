package org.coatrun.shared.estimate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.surface.FluteVoid;
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.surface.SoffitMeasure;
import org.coatrun.shared.surface.SurfaceLedger;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.SectionFactor;
import org.coatrun.shared.units.Volume;

/**
 * What was measured of an element that counts.
 *
 * @param weight empty where the body is not steel alone, as of a slab on deck
 * @param section empty for plates, decks and shapes without an axis
 * @param covers what covers it, sorted by element
 * @param fluteVoids voids over it in decks whose flutes run across it, sorted by deck
 * @param soffit of a deck its underside
 */
public record Quantities(
    Length length,
    Volume volume,
    Optional<Weight> weight,
    SurfaceLedger ledger,
    Optional<SectionMeasure> section,
    List<Cover> covers,
    List<FluteVoid> fluteVoids,
    Optional<SoffitMeasure> soffit) {

  public Quantities {
    covers = List.copyOf(covers);
    fluteVoids = List.copyOf(fluteVoids);
  }

  /**
   * Heated perimeter over area of steel; empty without a section, or where nothing of it is
   * exposed.
   */
  public Optional<SectionFactor> sectionFactor() {
    return section
        .filter(s -> s.heated().metres() > 0 && s.steel().squareMetres() > 0)
        .map(s -> SectionFactor.of(s.heated(), s.steel()));
  }

  /**
   * W/D in lb/ft/in: weight per foot over heated perimeter. W is the nominal weight where the
   * designation states one that the geometry bears out, else the area of steel at 490 lb/ft3 (IBC
   * 722.5.1.1 defines W and D). Empty where {@link #sectionFactor()} is.
   */
  public OptionalDouble weightOverPerimeter() {
    Optional<SectionFactor> factor = sectionFactor();
    if (factor.isEmpty()) {
      return OptionalDouble.empty();
    }
    double heatedInches = section.orElseThrow().heated().inches();
    return OptionalDouble.of(
        weight
            .flatMap(Weight::nominal)
            .map(w -> w.poundsPerFoot() / heatedInches)
            .orElseGet(() -> factor.get().weightOverPerimeter()));
  }

  /** Volume of all flute voids over it. */
  public Volume fluteVolume() {
    return Volume.ofCubicMetres(
        fluteVoids.stream().mapToDouble(v -> v.volume().cubicMetres()).sum());
  }
}
