package org.coatrun.testmodels.erect;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.coatrun.testmodels.facts.Matter;
import org.coatrun.testmodels.ifc.ElementKind;

/**
 * What a slab consists of.
 *
 * @param title type name
 * @param layers thickness in metres by material, from the top down
 */
public record SlabMakeUp(
    ElementKind kind, String predefined, String title, Matter matter, Map<String, Double> layers) {
  private static final double INCH = 0.0254;

  public SlabMakeUp {
    layers = Collections.unmodifiableMap(new LinkedHashMap<>(layers));
  }

  /** Concrete on a 2 in composite deck, 5 1/4 in in all, drawn as one flat slab. */
  public static SlabMakeUp compositeDeck() {
    Map<String, Double> layers = new LinkedHashMap<>();
    layers.put(Grade.LIGHT_CONCRETE.title(), 3.25 * INCH);
    layers.put("Metal deck 2 in composite 18 ga", 2 * INCH);
    String title = "Composite metal deck 2 in 18 ga, 5 1/4 in in all";
    return new SlabMakeUp(ElementKind.SLAB, "FLOOR", title, Matter.STEEL_DECK, layers);
  }

  /** Bare roof deck, drawn as a flat plate. */
  public static SlabMakeUp roofDeck() {
    String title = "Roof deck 1 1/2 in type B 22 ga galvanised";
    Map<String, Double> layers = Map.of("Metal roof deck 22 ga galvanised", 1.5 * INCH);
    return new SlabMakeUp(ElementKind.SLAB, "ROOF", title, Matter.STEEL_DECK, layers);
  }

  /** Solid concrete. */
  public static SlabMakeUp concrete(String predefined, double thickness) {
    String title = "Concrete slab " + Math.round(thickness * 1000) + " mm";
    Map<String, Double> layers = Map.of(Grade.CONCRETE.title(), thickness);
    return new SlabMakeUp(ElementKind.SLAB, predefined, title, Matter.CONCRETE, layers);
  }

  /** Returns the whole thickness in metres. */
  public double thickness() {
    return layers.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  String category() {
    return matter == Matter.CONCRETE ? "concrete" : "steel";
  }
}
