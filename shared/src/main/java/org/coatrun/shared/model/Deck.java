package org.coatrun.shared.model;

import java.util.List;

/**
 * Metal deck: a sheet with real flutes, or a slab that the model only calls deck.
 *
 * @param form how the model draws it
 * @param roof whether the model states that it is roof, by its class or predefined type, or by that
 *     of a whole it is a part of; where not, it may be either
 * @param evidence why it is taken for deck
 */
public record Deck(
    Identity identity,
    Form form,
    boolean roof,
    List<Evidence> evidence,
    List<Material> materials,
    Properties properties,
    Body body)
    implements Element {

  /** How a model draws deck. */
  public enum Form {
    /** The sheet itself, with its flutes. */
    SHEET,
    /** A slab of concrete whose soffit is deck. */
    SLAB_ON_DECK,
    /** A flat plate that stands for a bare deck. */
    FLAT
  }

  public Deck {
    evidence = List.copyOf(evidence);
    materials = List.copyOf(materials);
  }
}
