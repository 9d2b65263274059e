package org.coatrun.ifcimport.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.units.Length;

/** Storeys, and which storey and whole an element belongs to. */
final class Structure {

  static final int MOST_NESTED = 64;
  private static final double SAME_HEIGHT = 0.001;

  private final SourceFile file;

  Structure(SourceFile file) {
    this.file = file;
  }

  /** Storeys from the lowest up. */
  List<Storey> storeys() {
    var storeys = new ArrayList<Storey>();
    for (long id : file.model().idsOf("IfcBuildingStorey")) {
      try {
        storeys.add(storey(file.model().get(id)));
      } catch (BrokenRecordException e) {
        file.findings().broken(e);
      }
    }
    storeys.sort(Comparator.comparing(Storey::elevation).thenComparing(Storey::id));
    return storeys;
  }

  private Storey storey(Entity s) {
    return new Storey(
        new ElementId(file.number(), s.id()),
        s.text("GlobalId"),
        s.text("Name").isBlank() ? s.text("LongName") : s.text("Name"),
        Length.ofMetres(height(s)));
  }

  /**
   * The height of the storey's place in the world. Files that do not place their storeys at all
   * state the height only as an attribute, counted from the building.
   */
  private double height(Entity s) {
    Optional<Double> placed = placedHeight(s);
    if (s.number("Elevation").isEmpty()) {
      return placed.orElse(0.0);
    }
    double stated = s.needNumber("Elevation") * file.units().length();
    double base = buildingHeight(s);
    if (placed.isEmpty() || Math.abs(placed.get() - base) < SAME_HEIGHT) {
      return base + stated;
    }
    if (Math.abs(placed.get() - base - stated) > SAME_HEIGHT
        && Math.abs(placed.get() - stated) > SAME_HEIGHT) {
      file.findings()
          .add(
              ModelFinding.STOREY_HEIGHT,
              s.id(),
              s.text("GlobalId"),
              String.format(
                  Locale.ROOT,
                  "Storey '%s' is placed at %.3f m and says %.3f m.",
                  s.text("Name"),
                  placed.get(),
                  stated));
    }
    return placed.get();
  }

  private Optional<Double> placedHeight(Entity product) {
    var placement = product.refId("ObjectPlacement");
    return placement.isEmpty()
        ? Optional.empty()
        : file.shapes().originOf(placement.getAsLong()).map(o -> o.z());
  }

  private double buildingHeight(Entity storey) {
    long whole = file.relations().wholeOf.first(storey.id());
    return whole < 0 ? 0 : file.model().find(whole).flatMap(this::placedHeight).orElse(0.0);
  }

  /** The storey of an element, its own, its whole's, or that of what it fills or cuts. */
  Optional<ElementId> storeyOf(long element) {
    long at = element;
    for (int i = 0; i < MOST_NESTED; i++) {
      if (file.model().isA(at, "IfcBuildingStorey")) {
        return Optional.of(new ElementId(file.number(), at));
      }
      long next = file.relations().structureOf.first(at);
      next = next < 0 ? file.relations().wholeOf.first(at) : next;
      next = next < 0 ? file.relations().openingOf.first(at) : next;
      next = next < 0 ? file.relations().hostOf.first(at) : next;
      if (next < 0) {
        return Optional.empty();
      }
      at = next;
    }
    file.findings()
        .add(
            ModelFinding.STRUCTURE_CYCLE,
            element,
            "",
            "#" + element + " is nested more than " + MOST_NESTED + " deep, or part of itself.");
    return Optional.empty();
  }

  /** The element that this one is a part of; rooms and storeys are no wholes. */
  Optional<ElementId> wholeOf(long element) {
    if (isPartOfItself(element)) {
      file.findings()
          .add(ModelFinding.STRUCTURE_CYCLE, element, "", "#" + element + " is a part of itself.");
      return Optional.empty();
    }
    long whole = file.relations().wholeOf.first(element);
    return whole >= 0 && file.model().isA(whole, "IfcElement")
        ? Optional.of(new ElementId(file.number(), whole))
        : Optional.empty();
  }

  /** Whether an element is among its own wholes; it counts as having none then. */
  boolean isPartOfItself(long element) {
    long at = file.relations().wholeOf.first(element);
    for (int i = 0; i < MOST_NESTED && at >= 0 && at != element; i++) {
      at = file.relations().wholeOf.first(at);
    }
    return at == element;
  }
}
