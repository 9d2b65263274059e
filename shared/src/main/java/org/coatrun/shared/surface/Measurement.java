package org.coatrun.shared.surface;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.finding.FindingCode;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/** What came of measuring an element. */
public sealed interface Measurement {

  ElementId id();

  /**
   * Measured in full.
   *
   * @param length along the member, end to end
   * @param volume of the steel
   * @param section empty for plates and shapes without an axis
   * @param covers what covers it, sorted by element
   * @param fluteVoids voids over it in decks whose flutes run across it, sorted by deck
   * @param soffit of a deck its underside; empty for anything else
   */
  record Measured(
      ElementId id,
      Length length,
      Volume volume,
      SurfaceLedger ledger,
      Optional<SectionMeasure> section,
      List<Cover> covers,
      List<FluteVoid> fluteVoids,
      Optional<SoffitMeasure> soffit)
      implements Measurement {
    public Measured {
      covers = List.copyOf(covers);
      fluteVoids = List.copyOf(fluteVoids);
    }

    /** Without a word of deck. */
    public Measured(
        ElementId id,
        Length length,
        Volume volume,
        SurfaceLedger ledger,
        Optional<SectionMeasure> section,
        List<Cover> covers) {
      this(id, length, volume, ledger, section, covers, List.of(), Optional.empty());
    }
  }

  /**
   * Not measured; never to be taken for zero.
   *
   * @param kind what could not be handled, by its name in the model
   */
  record Unresolved(ElementId id, FindingCode code, String kind, String sentence)
      implements Measurement {}
}
